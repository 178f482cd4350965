package org.sagwise.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.sagwise.file.Saved;
import org.sagwise.file.ScenarioFiles;
import org.sagwise.file.ScenarioWriter;
import org.sagwise.scenario.Scenario;

/** Hands out a scenario that a call has made: on standard output, or in a file of its own. */
final class ScenarioOutput {

    private final CallContext call;
    private final Optional<String> file;
    private final Overwriting overwriting;

    /**
     * @param out what the call named; null or {@code -} for standard output
     * @param overwriting whether a file may be replaced
     */
    ScenarioOutput(CallContext call, String out, Overwriting overwriting) {
        this.call = call;
        this.file = Optional.ofNullable(out).filter(name -> !OutputFile.isStandardOutput(name));
        this.overwriting = overwriting;
    }

    /** Whether it goes to standard output, where nothing else may stand. */
    boolean isPrinted() {
        return file.isEmpty();
    }

    /** Writes it and gives the exit status. */
    int write(Scenario scenario) {
        if (file.isEmpty()) {
            call.out().print(JsonWriter.unsteered(ScenarioWriter.write(scenario)));
            return ExitStatus.DONE;
        }
        Optional<String> wrong = new OutputFile(call, file.get(), overwriting, List.of()).wrong();
        if (wrong.isPresent()) {
            call.problem(wrong.get());
            return ExitStatus.WRONG;
        }
        if (ScenarioFiles.save(Path.of(file.get()), scenario) instanceof Saved.Failed failed) {
            call.problem(failed.problem().text(call.locale()));
            return ExitStatus.WRONG;
        }
        call.result(call.texts().say("out.written", file.get()));
        return ExitStatus.DONE;
    }
}
