package org.sagwise.cli;

import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Opens the bench. */
@Command(name = "open", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class OpenCommand implements Callable<Integer> {

    private final CallContext call;

    @Parameters(arity = "0..1", paramLabel = "FILE", descriptionKey = "file.open")
    private String file;

    OpenCommand(CallContext call) {
        this.call = call;
    }

    @Override
    public Integer call() {
        return new Opening(call).open(file, Set.of());
    }
}
