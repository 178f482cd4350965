package org.sagwise.ui.kit;

import java.util.function.DoubleConsumer;
import javafx.animation.AnimationTimer;

/** Makes things go on in a window while they do and can be seen, in step with its frames. */
public final class Beat extends AnimationTimer {

    private static final double NANO = 1e-9;

    /** A gap longer than this was no frame: the window was away. */
    private static final double LONGEST_FRAME_S = 0.1;

    private final double leastGapS;
    private final DoubleConsumer step;
    private long last;
    private boolean running;

    private Beat(double leastGapS, DoubleConsumer step) {
        this.leastGapS = leastGapS;
        this.step = step;
    }

    /**
     * Goes on with every frame.
     *
     * @param step told how many seconds have passed since the frame before
     */
    public static Beat eachFrame(DoubleConsumer step) {
        return new Beat(0, step);
    }

    /**
     * Goes on with a frame now and then, to leave the machine room for painting.
     *
     * @param gapS time from one step to the next at least, s
     */
    public static Beat each(double gapS, Runnable step) {
        return new Beat(gapS, passedS -> step.run());
    }

    /** Starts or stops, unless it goes or stands already. */
    public void run(boolean run) {
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
        double passedS = last == 0 ? 0 : (now - last) * NANO;
        if (last == 0 || passedS >= leastGapS) {
            last = now;
            step.accept(Math.min(LONGEST_FRAME_S, passedS));
        }
    }
}
