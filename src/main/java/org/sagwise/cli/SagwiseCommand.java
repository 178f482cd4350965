package org.sagwise.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;

/** The command line: what stands behind {@code sagwise}, with its verbs as sub-commands. */
@Command(
        name = "sagwise",
        resourceBundle = "org.sagwise.texts.cli",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
public final class SagwiseCommand implements Callable<Integer> {

    /** Exit status when the input or the call is wrong. */
    private static final int WRONG_CALL = 2;

    /** Exit status when the program itself failed. */
    private static final int FAILED = 3;

    private final WindowOpener opener;
    private final PrintWriter err;

    @Parameters(arity = "0..1", paramLabel = "FILE", descriptionKey = "file")
    private Path file;

    private SagwiseCommand(WindowOpener opener, PrintWriter err) {
        this.opener = opener;
        this.err = err;
    }

    /**
     * Carries out one call of the program.
     *
     * @param args what stood behind the program's name
     * @param opener opens the window, where one is asked for
     * @param out takes results; flushed by the caller
     * @param err takes problems; flushed by the caller
     * @param in where {@code -} reads from
     * @return the exit status
     */
    public static int run(
            String[] args, WindowOpener opener, PrintWriter out, PrintWriter err, InputStream in) {
        return new CommandLine(new SagwiseCommand(opener, err))
                .setOut(out)
                .setErr(err)
                .setExitCodeExceptionMapper(failure -> FAILED)
                .setParameterExceptionHandler(SagwiseCommand::wrongCall)
                .execute(args);
    }

    private static int wrongCall(CommandLine.ParameterException wrong, String[] args) {
        CommandLine command = wrong.getCommandLine();
        command.getErr().println(wrong.getMessage());
        command.usage(command.getErr());
        return WRONG_CALL;
    }

    @Override
    public Integer call() {
        Optional<WindowObstacle> obstacle = opener.obstacle();
        if (obstacle.isPresent()) {
            err.println(obstacle.get().text(Locale.getDefault()));
            return 0;
        }
        return opener.open(Optional.ofNullable(file));
    }
}
