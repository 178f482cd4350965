package org.sagwise.caution;

import org.sagwise.part.Catalogue;
import org.sagwise.reading.Bench;
import org.sagwise.reading.Ledger;
import org.sagwise.reading.Press;
import org.sagwise.reading.Readings;
import org.sagwise.reading.Staircase;
import org.sagwise.reading.States;
import org.sagwise.scenario.Scenario;

import java.util.List;

/**
 * All there is to say about a scenario at one moment: what screens, command line and exports show.
 * Readings, ledger and stairs are those of the moment. Cautions speak of the circuit as it is laid
 * out, and stay the same at every moment.
 *
 * @param bench the bench
 * @param states what time has brought along; {@link Bench#start()} where it begins
 * @param readings readings at this moment
 * @param ledger where every volt and watt of these readings goes
 * @param staircase the climb of these readings
 * @param cautions what a competent person would be told, with the button let go and held
 */
public record Assessment(
        Bench bench,
        States states,
        Readings readings,
        Ledger ledger,
        Staircase staircase,
        List<Caution> cautions) {

    public Assessment {
        cautions = List.copyOf(cautions);
    }

    /** A scenario at the instant at which it begins, with the button as it says. */
    public static Assessment of(Scenario scenario, Catalogue catalogue) {
        Bench bench = Bench.of(scenario, catalogue);
        Press press = scenario.fired() ? Press.HELD : Press.RELEASED;
        return atStart(bench, press, Hazards.check(bench));
    }

    /** The same moment with the button held or let go; nothing is looked up or checked again. */
    public Assessment with(Press press) {
        return at(states, press);
    }

    /** Another moment of the same bench; nothing is looked up or checked again. */
    public Assessment at(States other, Press press) {
        if (other == bench.start()) {
            return atStart(bench, press, cautions);
        }
        Readings then = bench.at(other, press);
        return new Assessment(
                bench, other, then, Ledger.of(then), Staircase.of(bench, other, press), cautions);
    }

    /** The same with these cautions only. */
    public Assessment saying(List<Caution> others) {
        return new Assessment(bench, states, readings, ledger, staircase, others);
    }

    private static Assessment atStart(Bench bench, Press press, List<Caution> cautions) {
        Readings readings = press == Press.HELD ? bench.fired() : bench.rest();
        return new Assessment(
                bench,
                bench.start(),
                readings,
                Ledger.of(readings),
                Staircase.of(bench, press),
                cautions);
    }

    public Scenario scenario() {
        return bench.scenario();
    }
}
