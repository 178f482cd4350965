package org.sagwise.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.sagwise.file.Saved;
import org.sagwise.file.ScenarioFiles;
import org.sagwise.file.ScenarioWriter;
import org.sagwise.scenario.Scenario;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Where a scenario goes that a call has made: to standard output, or into a file of its own. */
final class ScenarioOutput {

    @Option(names = "-o", paramLabel = "FILE", descriptionKey = "out")
    private String out;

    @Mixin
    private Overwriting overwriting;

    /** Whether the call names a place. */
    boolean isNamed() {
        return out != null;
    }

    /** Whether it goes to standard output, where nothing else may stand. */
    boolean isPrinted() {
        return out == null || OutputFile.isStandardOutput(out);
    }

    /** Writes it and gives the exit status. */
    int write(CallContext call, Scenario scenario) {
        if (isPrinted()) {
            call.out().print(JsonWriter.unsteered(ScenarioWriter.write(scenario)));
            return ExitStatus.DONE;
        }
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
