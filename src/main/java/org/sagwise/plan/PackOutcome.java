package org.sagwise.plan;

import java.util.Optional;
import org.sagwise.part.Catalogue;
import org.sagwise.reading.Bench;
import org.sagwise.reading.CellReading;
import org.sagwise.reading.CoilReading;
import org.sagwise.reading.Readings;
import org.sagwise.run.RunPlan;
import org.sagwise.run.Runner;
import org.sagwise.scenario.Scenario;

/**
 * What a layout of cells does for its one coil, to be set beside another one.
 *
 * @param coilOhm resistance of the coil at this instant, Ω
 * @param coilV voltage at the coil with the button held, V
 * @param coilA current through the coil, A
 * @param cellA current of the cell that gives most, A
 * @param coilW power in the coil, W
 */
public record PackOutcome(double coilOhm, double coilV, double coilA, double cellA, double coilW) {

    /** The instant of firing; empty where there is not one coil alone. */
    public static Optional<PackOutcome> of(Scenario scenario, Catalogue catalogue) {
        Readings fired = Bench.of(scenario, catalogue).fired();
        if (fired.coils().size() != 1) {
            return Optional.empty();
        }
        CoilReading coil = fired.coils().get(0);
        double most =
                fired.cells().stream().mapToDouble(CellReading::currentA).max().orElse(0);
        return Optional.of(
                new PackOutcome(coil.ohm(), Math.abs(coil.voltsV()), Math.abs(coil.currentA()), most, coil.powerW()));
    }

    /**
     * How long the button can be held in all, pressed in the usual way ({@link RunPlan#USUAL}),
     * before the run ends, s.
     */
    public static double lastsS(Scenario scenario, Catalogue catalogue) {
        return Runner.run(Bench.of(scenario, catalogue), RunPlan.USUAL).last().firedS();
    }
}
