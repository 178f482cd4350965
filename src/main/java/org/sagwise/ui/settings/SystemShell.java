package org.sagwise.ui.settings;

import java.io.IOException;
import java.nio.charset.Charset;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/** Asks the system's own tools short questions. */
public final class SystemShell {

    private static final long PATIENCE_MS = 1500;

    private SystemShell() {}

    /**
     * Runs a command and gives what it printed; empty if it is not there, fails or takes too long.
     */
    public static Optional<String> ask(List<String> command) {
        try {
            Process process = new ProcessBuilder(command)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            process.getOutputStream().close();
            return answerOf(process);
        } catch (IOException notThere) {
            return Optional.empty();
        }
    }

    private static Optional<String> answerOf(Process process) throws IOException {
        try {
            if (!process.waitFor(PATIENCE_MS, TimeUnit.MILLISECONDS)) {
                process.destroy();
                return Optional.empty();
            }
        } catch (InterruptedException stop) {
            process.destroy();
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
        String printed = new String(process.getInputStream().readAllBytes(), Charset.defaultCharset());
        return process.exitValue() == 0 ? Optional.of(printed) : Optional.empty();
    }
}
