package org.sagwise.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.sagwise.file.Saved;
import org.sagwise.file.ScenarioFiles;
import org.sagwise.file.ScenarioWriter;
import org.sagwise.scenario.Scenario;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Turns share text back into a scenario file. */
@Command(name = "unshare", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class UnshareCommand implements Callable<Integer> {

    private final CallContext call;

    @Parameters(arity = "1..*", paramLabel = "TEXT", descriptionKey = "unshare.text")
    private List<String> words;

    @Option(names = "-o", paramLabel = "FILE", descriptionKey = "out")
    private String out;

    @Mixin
    private Overwriting overwriting;

    UnshareCommand(CallContext call) {
        this.call = call;
    }

    @Override
    public Integer call() {
        GivenScenario given = new ScenarioInput(call).readShared(String.join(" ", words));
        if (given.scenario().isEmpty()) {
            given.complain(call);
            return ExitStatus.WRONG;
        }
        Scenario scenario = given.scenario().get();
        if (out == null || OutputFile.isStandardOutput(out)) {
            call.out().print(JsonWriter.unsteered(ScenarioWriter.write(scenario)));
            return ExitStatus.DONE;
        }
        return save(scenario);
    }

    private int save(Scenario scenario) {
        Optional<String> wrong = new OutputFile(call, out, overwriting, List.of()).wrong();
        if (wrong.isPresent()) {
            call.problem(wrong.get());
            return ExitStatus.WRONG;
        }
        if (ScenarioFiles.save(Path.of(out), scenario) instanceof Saved.Failed failed) {
            call.problem(failed.problem().text(call.locale()));
            return ExitStatus.WRONG;
        }
        call.result(call.texts().say("out.written", out));
        return ExitStatus.DONE;
    }
}
