package org.sagwise.lesson;

import java.util.function.LongSupplier;

/**
 * When hints are given. The first one of a step comes when it is asked for. A plainer one comes
 * after something was tried, or after a while: a chain of hints that is clicked through teaches
 * nothing. Whoever tries nothing for long is told once that there is a hint.
 */
public final class HintPace {

    /** From one hint to the next where nothing was tried, s. */
    public static final double BETWEEN_S = 10;

    /** Without anything tried, until a hint is offered, s. */
    public static final double STUCK_S = 90;

    private final LongSupplier nanoTime;
    private long triedAt;
    private long hintedAt;
    private boolean waits;
    private boolean offers;
    private boolean offered;

    /**
     * @param nanoTime real time, ns
     */
    public HintPace(LongSupplier nanoTime) {
        this.nanoTime = nanoTime;
        begin();
    }

    /** Whether a hint may be asked for now. */
    public boolean mayHint() {
        return !waits;
    }

    /** Whether it is time to say that there are hints. */
    public boolean offers() {
        return offers;
    }

    /** A step begins. */
    public void begin() {
        tried();
        offered = false;
    }

    /** Something was tried: the bench was changed, the button pressed, a number typed. */
    public void tried() {
        triedAt = nanoTime.getAsLong();
        waits = false;
        offers = false;
    }

    /** A hint was given. */
    public void hinted() {
        hintedAt = nanoTime.getAsLong();
        triedAt = hintedAt;
        waits = true;
        offers = false;
    }

    /** Looks at the time; called about once a second. */
    public void look() {
        waits = waits && secondsSince(hintedAt) < BETWEEN_S;
        if (!offered && secondsSince(triedAt) >= STUCK_S) {
            offered = true;
            offers = true;
        }
    }

    private double secondsSince(long then) {
        return (nanoTime.getAsLong() - then) * 1e-9;
    }
}
