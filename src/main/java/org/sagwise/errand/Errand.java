package org.sagwise.errand;

import java.util.function.LongSupplier;
import java.util.function.Supplier;

/**
 * A piece of work on one thread that another one may call off, and that may take only so much. What takes long asks now
 * and then whether it is still wanted ({@link #heed}); outside of any errand that costs next to nothing and does
 * nothing. Threads are not interrupted for it: that would close files which they happen to read.
 */
public final class Errand {

    /** A hundred times what the largest bench of the demos takes, whatever is asked, ns of processor time. */
    public static final long USUAL_NS = 120_000_000_000L;

    /** Looking at a clock costs more than what is done between two looks. */
    private static final int CLOCK_EVERY = 64;

    private static final ThreadLocal<Errand> UNDER_WAY = new ThreadLocal<>();

    private final LongSupplier clockNs;
    private final long mostNs;
    private volatile boolean calledOff;
    private long endNs;
    private int looks;

    /**
     * @param clockNs what is counted, such as the processor time of the thread that asks, ns
     * @param mostNs how much of it the work may take, ns, above 0
     */
    public Errand(LongSupplier clockNs, long mostNs) {
        this.clockNs = clockNs;
        this.mostNs = mostNs;
    }

    /**
     * Does the work on this thread.
     *
     * @throws GivenUp out of the middle of the work, if it was called off or takes too much
     */
    public <T> T run(Supplier<T> work) {
        Errand before = UNDER_WAY.get();
        endNs = clockNs.getAsLong() + mostNs;
        UNDER_WAY.set(this);
        try {
            look();
            return work.get();
        } finally {
            if (before == null) {
                UNDER_WAY.remove();
            } else {
                UNDER_WAY.set(before);
            }
        }
    }

    /** Ends it where it asks next; may come from any thread, before it has begun as well. */
    public void callOff() {
        calledOff = true;
    }

    /**
     * Asks whether what this thread is doing is still wanted.
     *
     * @throws GivenUp if it is not
     */
    public static void heed() {
        Errand mine = UNDER_WAY.get();
        if (mine != null) {
            mine.look();
        }
    }

    private void look() {
        if (calledOff) {
            throw new GivenUp(false);
        }
        if (looks++ % CLOCK_EVERY == 0 && clockNs.getAsLong() - endNs > 0) {
            throw new GivenUp(true);
        }
    }
}
