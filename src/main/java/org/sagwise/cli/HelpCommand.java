package org.sagwise.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints the help of the program or of a verb, or all of it as a manual page. */
@Command(name = "help", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class HelpCommand implements Callable<Integer> {

    private final CallContext call;

    @Spec
    private CommandSpec spec;

    @Parameters(arity = "0..*", paramLabel = "VERB", descriptionKey = "help.verb")
    private List<String> verbs;

    @Option(names = "--man", descriptionKey = "help.man")
    private boolean man;

    HelpCommand(CallContext call) {
        this.call = call;
    }

    @Override
    public Integer call() {
        if (man) {
            call.out().print(ManPage.of(call.locale(), Version.number()));
            return ExitStatus.DONE;
        }
        CommandLine asked = spec.root().commandLine();
        for (String verb : verbs == null ? List.<String>of() : verbs) {
            CommandLine inner = asked.getSubcommands().get(verb);
            if (inner == null) {
                throw new ParameterException(
                        spec.commandLine(),
                        WrongValue.words(
                                call.texts(),
                                "VERB",
                                verb,
                                List.copyOf(asked.getSubcommands().keySet())));
            }
            asked = inner;
        }
        asked.usage(call.out());
        return ExitStatus.DONE;
    }
}
