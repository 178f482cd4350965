package org.sagwise.cli;

import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints a script that makes a shell complete verbs and options. */
@Command(name = "completion", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class CompletionCommand implements Callable<Integer> {

    private static final Map<String, Function<CommandLine, String>> SHELLS = Map.of(
            "bash",
            program -> AutoComplete.bash(program.getCommandName(), program),
            "zsh",
            program -> new ZshCompletion(program.getCommandSpec()).script(),
            "fish",
            program -> new FishCompletion(program.getCommandSpec()).script());

    private final CallContext call;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "bash|zsh|fish", descriptionKey = "completion.shell")
    private String shell;

    CompletionCommand(CallContext call) {
        this.call = call;
    }

    @Override
    public Integer call() {
        Function<CommandLine, String> script = SHELLS.get(shell);
        if (script == null) {
            throw new ParameterException(
                    spec.commandLine(),
                    WrongValue.words(call.texts(), "completion", shell, List.of("bash", "zsh", "fish")));
        }
        call.out().print(script.apply(spec.root().commandLine()));
        return ExitStatus.DONE;
    }
}
