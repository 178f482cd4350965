package org.sagwise.cli;

import java.util.Optional;

/** For calls that open no window, on machines that may have no display. */
public final class NoWindow implements WindowOpener {

    @Override
    public Optional<WindowObstacle> obstacle() {
        return Optional.of(WindowObstacle.NO_DISPLAY);
    }

    @Override
    public int open(WindowRequest request) {
        return 0;
    }
}
