package org.sagwise.plan;

import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import org.sagwise.part.PartKind;
import org.sagwise.part.Role;
import org.sagwise.reading.Bench;
import org.sagwise.reading.Readings;
import org.sagwise.scenario.Scenario;

/**
 * What a bench lacks most before current can go round on it. For benches that nothing is flagged
 * on: where a loop is all but closed, or where cells cancel each other, a caution says more.
 */
public enum NextStep {
    /** Something that gives: a cell. */
    SOURCE,
    /** Something that takes: a coil. */
    LOAD,
    /** A button to close the loop with. */
    SWITCH,
    /** Joints: all parts are there, and yet the loop is not closed with the button held. */
    JOINTS,
    /** Nothing: current goes round. */
    NONE;

    /** Currents below this are none (A); what a voltmeter across a cell lets through is less. */
    private static final double LEAST_A = 1e-6;

    /** The next step for whoever builds on a bench, as it is with the button held. */
    public static NextStep of(Bench bench) {
        Scenario scenario = bench.scenario();
        if (lacks(scenario, kind -> kind.role() == Role.SOURCE && kind != PartKind.CHARGER)) {
            return SOURCE;
        }
        if (flows(bench.fired())) {
            return NONE;
        }
        if (lacks(scenario, kind -> kind.role() == Role.LOAD || kind == PartKind.CHARGER)) {
            return LOAD;
        }
        return lacks(scenario, kind -> kind == PartKind.SWITCH) ? SWITCH : JOINTS;
    }

    private static boolean lacks(Scenario scenario, Predicate<PartKind> wanted) {
        return scenario.parts().stream().noneMatch(part -> wanted.test(part.kind()));
    }

    private static boolean flows(Readings readings) {
        DoubleStream cells = readings.cells().stream().mapToDouble(cell -> cell.currentA());
        DoubleStream coils = readings.coils().stream().mapToDouble(coil -> coil.currentA());
        DoubleStream parts = readings.parts().stream().mapToDouble(part -> part.currentA());
        // What cannot be told (NaN) is a contradiction, and no part or joint is missing there.
        return DoubleStream.concat(cells, DoubleStream.concat(coils, parts))
                .anyMatch(ampere -> !(Math.abs(ampere) < LEAST_A));
    }
}
