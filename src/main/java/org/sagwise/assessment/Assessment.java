package org.sagwise.assessment;

import java.util.List;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.Hazards;
import org.sagwise.hazard.LookAhead;
import org.sagwise.part.Catalogue;
import org.sagwise.reading.Bench;
import org.sagwise.reading.Instant;
import org.sagwise.reading.Ledger;
import org.sagwise.reading.Readings;
import org.sagwise.reading.Staircase;
import org.sagwise.reading.States;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;

/**
 * All there is to say about a scenario at one moment: what screens, command line and exports show.
 * Readings, ledger and stairs are those of the moment. Cautions speak of the circuit as it is laid
 * out, and stay the same at every moment.
 *
 * @param instant the moment: what can be measured, and the climb
 * @param ledger where every volt and watt of its readings goes
 * @param cautions what a competent person would be told, with the button let go and held
 */
public record Assessment(Instant instant, Ledger ledger, List<Caution> cautions) {

    public Assessment {
        cautions = List.copyOf(cautions);
    }

    /** A scenario at the instant at which it begins, with the button as it says. */
    public static Assessment of(Scenario scenario, Catalogue catalogue) {
        Bench bench = Bench.of(scenario, catalogue);
        return of(Instant.start(bench, scenario.press()), Hazards.check(bench));
    }

    private static Assessment of(Instant instant, List<Caution> cautions) {
        return new Assessment(instant, Ledger.of(instant.readings()), cautions);
    }

    /** The same with what only time shows; runs the bench, which can take some tenths of a second. */
    public Assessment lookingAhead() {
        return saying(LookAhead.added(bench(), cautions));
    }

    /** The same moment with the button held or let go; nothing is looked up or checked again. */
    public Assessment with(Press press) {
        return at(states(), press);
    }

    /** Another moment of the same bench; nothing is looked up or checked again. */
    public Assessment at(States other, Press press) {
        return of(instant.then(other, press), cautions);
    }

    /** The same with these cautions only. */
    public Assessment saying(List<Caution> others) {
        return new Assessment(instant, ledger, others);
    }

    /**
     * The same telling only what lies there: no reading, no account, no climb, no caution. For who is to foretell
     * them.
     */
    public Assessment veiled() {
        return new Assessment(instant.behindVeil(), new Ledger(List.of(), 0), List.of());
    }

    /** Whether it tells only what lies there. */
    public boolean isVeiled() {
        return readings().isVeiled();
    }

    public Bench bench() {
        return instant.bench();
    }

    /** What time has brought along; {@link Bench#start()} where it begins. */
    public States states() {
        return instant.states();
    }

    /** Readings at this moment. */
    public Readings readings() {
        return instant.readings();
    }

    /** The climb of these readings. */
    public Staircase staircase() {
        return instant.staircase();
    }

    public Scenario scenario() {
        return bench().scenario();
    }
}
