package org.sagwise.reading;

import org.sagwise.scenario.Press;

/**
 * A bench at one instant: what can be measured, and the staircase. The network is solved once for
 * both.
 */
public final class Instant {

    private final Bench bench;
    private final States states;
    private final Moment shown;
    private final Moment way;
    private final Staircase staircase;
    private final boolean veiled;

    private Instant(Bench bench, States states, Moment shown, Moment way) {
        this(bench, states, shown, way, new StairBuilder(bench, way, shown, states).build(), false);
    }

    private Instant(Bench bench, States states, Moment shown, Moment way, Staircase staircase, boolean veiled) {
        this.bench = bench;
        this.states = states;
        this.shown = shown;
        this.way = way;
        this.staircase = staircase;
        this.veiled = veiled;
    }

    /** The same instant, telling only what its parts are: no reading that depends on the circuit, and no stairs. */
    public Instant behindVeil() {
        return new Instant(bench, states, shown, way, Staircase.flat(), true);
    }

    /** The start of a bench, its cells relaxed and its coils cold. */
    public static Instant start(Bench bench, Press press) {
        return new Instant(bench, bench.start(), bench.moment(press), bench.moment(Press.HELD));
    }

    /** A bench in any state. The stairs go the way that the current takes with the button held. */
    static Instant of(Bench bench, States states, Press press) {
        Moment shown = Moment.of(bench, states, press);
        Moment way = press.isHeld() ? shown : Moment.of(bench, states, Press.HELD);
        return new Instant(bench, states, shown, way);
    }

    /**
     * Another instant of the same bench. While the button is up the stairs keep to the way that the
     * current took before, unless something has melted or opened meanwhile; so their shape stays
     * when it is let go, and nothing is solved to find it.
     */
    public Instant then(States later, Press press) {
        if (later == bench.start()) {
            return start(bench, press);
        }
        if (press.isHeld() || !later.isJoinedAs(states)) {
            return of(bench, later, press);
        }
        return new Instant(bench, later, Moment.of(bench, later, press), way);
    }

    public Bench bench() {
        return bench;
    }

    /** What time has brought along until now. */
    public States states() {
        return states;
    }

    public Readings readings() {
        return veiled ? shown.readings().veiled() : shown.readings();
    }

    public Staircase staircase() {
        return staircase;
    }
}
