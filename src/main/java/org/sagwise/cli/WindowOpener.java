package org.sagwise.cli;

import java.util.Optional;

/**
 * Opens the bench window for the command line, which may not know how a window is made.
 *
 * <p>The launcher hands one in, so that a verb that needs no window loads nothing of JavaFX.
 */
public interface WindowOpener {

    /**
     * What keeps this machine from showing a window. Asking starts the window system, so only ask
     * before opening.
     *
     * @return empty when nothing does
     */
    Optional<WindowObstacle> obstacle();

    /**
     * Opens the window and returns when it has been closed.
     *
     * @param request what to show
     * @return the exit status of the program, 0 when the window was opened and closed
     */
    int open(WindowRequest request);
}
