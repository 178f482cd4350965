package org.sagwise.cli;

import org.sagwise.file.ShareText;

import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

import java.util.Optional;
import java.util.concurrent.Callable;

/** Prints the share text of a scenario. */
@Command(name = "share", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class ShareCommand implements Callable<Integer> {

    private final CallContext call;

    @Parameters(paramLabel = "FILE", descriptionKey = "file")
    private String file;

    ShareCommand(CallContext call) {
        this.call = call;
    }

    @Override
    public Integer call() {
        ScenarioInput input = new ScenarioInput(call);
        GivenScenario given = input.read(file);
        if (given.scenario().isEmpty()) {
            given.complain(call);
            return ExitStatus.WRONG;
        }
        Optional<String> text = ShareText.of(given.scenario().get());
        if (text.isEmpty()) {
            int most = ShareText.MOST_CHARACTERS / 1024;
            call.problem(call.texts().say("share.too-large", input.shown(file), most));
            return ExitStatus.WRONG;
        }
        call.result(text.get());
        return ExitStatus.DONE;
    }
}
