package org.sagwise.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** Prints the version. */
@Command(name = "version", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class VersionCommand implements Callable<Integer> {

    private final CallContext call;

    VersionCommand(CallContext call) {
        this.call = call;
    }

    @Override
    public Integer call() {
        for (String line : new Version().getVersion()) {
            call.result(line);
        }
        return ExitStatus.DONE;
    }
}
