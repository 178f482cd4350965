package org.sagwise.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Turns share text back into a scenario file. */
@Command(name = "unshare", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class UnshareCommand implements Callable<Integer> {

    private final CallContext call;

    @Parameters(arity = "1..*", paramLabel = "TEXT", descriptionKey = "unshare.text")
    private List<String> words;

    @Mixin
    private ScenarioOutput output;

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
        return output.write(call, given.scenario().get());
    }
}
