package org.sagwise.cli;

import java.nio.file.Path;
import java.util.Optional;

/**
 * Opens the bench window for the command line, which may not know how a window is made.
 *
 * <p>The launcher hands one in, so that a verb that needs no window loads nothing of JavaFX.
 */
@FunctionalInterface
public interface WindowOpener {

    /**
     * Opens the window and returns when it has been closed.
     *
     * @param file the scenario to show; empty for the opening page
     * @return the exit status of the program, 0 when the window was opened and closed
     */
    int open(Optional<Path> file);
}
