package org.sagwise.cli;

import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Opens the bench. */
@Command(name = "open", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class OpenCommand implements Callable<Integer> {

    private final CallContext call;

    @Spec
    private CommandSpec spec;

    @Parameters(arity = "0..1", paramLabel = "FILE", descriptionKey = "file.open")
    private String file;

    @Option(names = GivenFile.OF, paramLabel = "WORDS", descriptionKey = "of")
    private String words;

    OpenCommand(CallContext call) {
        this.call = call;
    }

    @Override
    public Integer call() {
        if (file != null && words != null) {
            String both = call.texts().say("wrong.one-of", "FILE, " + GivenFile.OF);
            throw new ParameterException(spec.commandLine(), both);
        }
        return words == null ? new Opening(call).open(file, Set.of()) : new Opening(call).openWords(words);
    }
}
