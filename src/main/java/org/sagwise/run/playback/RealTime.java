package org.sagwise.run.playback;

import java.util.List;
import java.util.function.LongSupplier;
import org.sagwise.scenario.Press;

/**
 * Turns real time into time on the bench that is owed: with the speed, and with the button as it
 * was held meanwhile.
 */
public final class RealTime {

    private static final double NANO = 1e-9;

    /** A gap longer than this was no passing of time: the window was away. */
    private static final double LONGEST_GAP_S = 0.25;

    private final LongSupplier nanoTime;
    private final Owed owed = new Owed();
    private Press held;
    private long last;

    /**
     * @param nanoTime real time, ns
     * @param held whether the button is held now
     */
    public RealTime(LongSupplier nanoTime, Press held) {
        this.nanoTime = nanoTime;
        this.held = held;
    }

    /** Begins to count. */
    public void start(Press press) {
        turn(press);
        last = nanoTime.getAsLong();
    }

    /**
     * Books what has passed since the last call. What cannot be computed in time is not owed for
     * ever: a slow machine lags by half a real second at most.
     */
    public void collect(Speed speed) {
        long time = nanoTime.getAsLong();
        double realS = Math.min(LONGEST_GAP_S, (time - last) * NANO);
        double room = 2 * LONGEST_GAP_S * speed.factor() - owed.seconds();
        last = time;
        owed.add(held, Math.max(0, Math.min(room, realS * speed.factor())));
    }

    /** The button turns while time passes: even a press without length counts. */
    public void turn(Press press) {
        set(press);
        owed.add(press, 0);
    }

    /** The button turns while time stands. */
    public void set(Press press) {
        held = press;
    }

    /** Asks for time on the bench, s, whatever the real time. */
    public void ask(Press press, double seconds) {
        owed.add(press, seconds);
    }

    public boolean isAnythingOwed() {
        return !owed.isEmpty();
    }

    public List<Owed.Stretch> takeOwed() {
        return owed.takeAll();
    }

    public void forgive() {
        owed.clear();
    }
}
