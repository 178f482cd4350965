package org.sagwise.caution;

import org.sagwise.part.Catalogue;
import org.sagwise.reading.Bench;
import org.sagwise.reading.Ledger;
import org.sagwise.reading.Press;
import org.sagwise.reading.Readings;
import org.sagwise.reading.Staircase;
import org.sagwise.scenario.Scenario;

import java.util.List;

/**
 * All there is to say about a scenario at the instant at which it begins: what screens, command
 * line and exports show.
 *
 * @param bench the bench
 * @param readings readings with the button as the scenario has it
 * @param ledger where every volt and watt of these readings goes
 * @param staircase the climb of these readings
 * @param cautions what a competent person would be told, with the button let go and held
 */
public record Assessment(
        Bench bench,
        Readings readings,
        Ledger ledger,
        Staircase staircase,
        List<Caution> cautions) {

    public Assessment {
        cautions = List.copyOf(cautions);
    }

    public static Assessment of(Scenario scenario, Catalogue catalogue) {
        Bench bench = Bench.of(scenario, catalogue);
        return of(bench, scenario.fired() ? Press.HELD : Press.RELEASED, Hazards.check(bench));
    }

    /** The same bench with the button held or let go; nothing is looked up or checked again. */
    public Assessment with(Press press) {
        return of(bench, press, cautions);
    }

    private static Assessment of(Bench bench, Press press, List<Caution> cautions) {
        Readings readings = press == Press.HELD ? bench.fired() : bench.rest();
        return new Assessment(
                bench, readings, Ledger.of(readings), Staircase.of(bench, press), cautions);
    }

    public Scenario scenario() {
        return bench.scenario();
    }
}
