package org.sagwise.cli;

import java.util.List;
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
        int status = new OutputFile(call, out, overwriting, List.of()).write(ScenarioWriter.write(scenario));
        if (status == ExitStatus.DONE) {
            call.result(call.texts().say("out.written", out));
        }
        return status;
    }
}
