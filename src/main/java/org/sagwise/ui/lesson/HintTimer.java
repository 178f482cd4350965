package org.sagwise.ui.lesson;

import java.util.function.LongSupplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;

/**
 * When hints are given. The first one of a step comes when it is asked for. A plainer one comes
 * after something was tried, or after a while: a chain of hints that is clicked through teaches
 * nothing. Whoever tries nothing for long is told once that there is a hint.
 */
public final class HintTimer {

    /** From one hint to the next where nothing was tried, s. */
    static final double BETWEEN_S = 10;

    /** Without anything tried, until a hint is offered, s. */
    static final double STUCK_S = 90;

    private final LongSupplier nanoTime;
    private final ReadOnlyBooleanWrapper mayHint = new ReadOnlyBooleanWrapper(true);
    private final ReadOnlyBooleanWrapper offers = new ReadOnlyBooleanWrapper(false);
    private long triedAt;
    private long hintedAt;
    private boolean waits;
    private boolean offered;

    /**
     * @param nanoTime real time, ns
     */
    public HintTimer(LongSupplier nanoTime) {
        this.nanoTime = nanoTime;
        begin();
    }

    /** Whether a hint may be asked for now. */
    public ReadOnlyBooleanProperty mayHintProperty() {
        return mayHint.getReadOnlyProperty();
    }

    /** Whether it is time to say that there are hints. */
    public ReadOnlyBooleanProperty offersProperty() {
        return offers.getReadOnlyProperty();
    }

    /** A step begins. */
    void begin() {
        triedAt = nanoTime.getAsLong();
        waits = false;
        offered = false;
        mayHint.set(true);
        offers.set(false);
    }

    /** Something was tried: the bench was changed, the button pressed, a number typed. */
    void tried() {
        triedAt = nanoTime.getAsLong();
        waits = false;
        mayHint.set(true);
        offers.set(false);
    }

    /** A hint was given. */
    void hinted() {
        hintedAt = nanoTime.getAsLong();
        triedAt = hintedAt;
        waits = true;
        mayHint.set(false);
        offers.set(false);
    }

    /** Looks at the time; called about once a second. */
    void look() {
        if (waits && secondsSince(hintedAt) >= BETWEEN_S) {
            waits = false;
            mayHint.set(true);
        }
        if (!offered && secondsSince(triedAt) >= STUCK_S) {
            offered = true;
            offers.set(true);
        }
    }

    private double secondsSince(long then) {
        return (nanoTime.getAsLong() - then) * 1e-9;
    }
}
