package org.sagwise.ui.clock;

import javafx.animation.AnimationTimer;

/**
 * Makes time pass in a window: tells the clock about it often enough for the eye, and seldom enough
 * to leave the machine room for painting.
 */
final class Beat extends AnimationTimer {

    private static final long BETWEEN_NS = 50_000_000;

    private final Runnable tick;
    private long last;
    private boolean running;

    Beat(Runnable tick) {
        this.tick = tick;
    }

    void run(boolean run) {
        if (run && !running) {
            start();
        } else if (!run && running) {
            stop();
        }
        running = run;
    }

    @Override
    public void handle(long now) {
        if (now - last >= BETWEEN_NS) {
            last = now;
            tick.run();
        }
    }
}
