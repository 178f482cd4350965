package org.sagwise.ui.bench;

import javafx.animation.AnimationTimer;

import java.util.function.DoubleConsumer;

/** The clock of what moves on the bench. It only runs while something moves and can be seen. */
final class Drift extends AnimationTimer {

    private static final double NANO = 1e-9;

    /** A gap longer than this was no frame: the window was away. */
    private static final double LONGEST_FRAME_S = 0.1;

    private final DoubleConsumer frame;
    private long last;
    private boolean running;

    /**
     * @param frame paints one frame, told how many seconds have passed since the one before
     */
    Drift(DoubleConsumer frame) {
        this.frame = frame;
    }

    void run(boolean run) {
        if (run && !running) {
            last = 0;
            start();
        } else if (!run && running) {
            stop();
        }
        running = run;
    }

    @Override
    public void handle(long now) {
        double passed = last == 0 ? 0 : Math.min(LONGEST_FRAME_S, (now - last) * NANO);
        last = now;
        frame.accept(passed);
    }
}
