package org.sagwise.run;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.sagwise.part.Ageing;
import org.sagwise.part.Catalogue;
import org.sagwise.part.CellResistance;
import org.sagwise.reading.Bench;
import org.sagwise.reading.ResolvedCell;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/**
 * How the cells of a pack age together: run down, charged again to where they began, and so on.
 * After every block of cycles the pack is run once, and what each cell went through in that run
 * ages it for the block. See {@link Ageing}: a teaching model.
 */
public final class LifeTogether {

    /**
     * Health below which a cell counts as worn out and the course ends; scenarios end there too.
     */
    private static final double LEAST_HEALTH = 0.3;

    private LifeTogether() {}

    /**
     * The pack after some cycles.
     *
     * @param cycles how many times it has been run down and charged
     * @param firedS how long it lasts now, with the button held, s
     * @param health share of the new capacity that each cell has left, by its id
     * @param left charge that each cell is left with when the first one stops the run, by its id
     */
    public record Age(int cycles, double firedS, Map<String, Double> health, Map<String, Double> left) {}

    /**
     * The course of a pack's life.
     *
     * @param cycles how many cycles, above 0
     * @param blocks into how many blocks they are divided, above 0
     */
    public static List<Age> course(Scenario scenario, Catalogue catalogue, RunPlan plan, int cycles, int blocks) {
        List<Age> course = new ArrayList<>();
        Scenario aged = scenario;
        for (int block = 0; block <= blocks; block++) {
            Bench bench = Bench.of(aged, catalogue);
            RunResult result = Runner.run(bench, plan);
            int before = (int) ((long) cycles * block / blocks);
            course.add(age(before, bench, result));
            int more = (int) ((long) cycles * (block + 1) / blocks) - before;
            aged = aged(aged, bench, result, more);
            if (isWornOut(aged)) {
                break;
            }
        }
        return course;
    }

    private static Age age(int cycles, Bench bench, RunResult result) {
        Map<String, Double> health = new LinkedHashMap<>();
        bench.cells().values().forEach(cell -> health.put(cell.id(), cell.health()));
        Map<String, Double> left = new LinkedHashMap<>();
        result.last().cells().forEach(cell -> left.put(cell.id(), cell.charge()));
        return new Age(cycles, result.last().firedS(), health, left);
    }

    private static Scenario aged(Scenario scenario, Bench bench, RunResult result, int cycles) {
        Map<String, Double> health = new LinkedHashMap<>();
        for (CellMoment last : result.last().cells()) {
            ResolvedCell cell = bench.cells().get(last.id());
            double swing = Math.abs(cell.start().charge() - last.charge());
            double rate = meanA(cell, swing, result) / cell.capacityAh();
            double loss = cycles * Ageing.lossPerCycle(swing, rate);
            health.put(last.id(), Math.max(LEAST_HEALTH, cell.health() - loss));
        }
        List<Part> parts = new ArrayList<>();
        for (Part part : scenario.parts()) {
            Double now = health.get(part.id());
            parts.add(now == null ? part : aged(part, bench.cells().get(part.id()), now));
        }
        return scenario.withParts(parts);
    }

    /** A cell with its own ohms has them at its health; older, it has more. */
    private static Part aged(Part part, ResolvedCell cell, double health) {
        Part aged = part.with("health", health);
        if (!part.keys().has("internal_mohm")) {
            return aged;
        }
        double growth = CellResistance.healthFactor(health) / CellResistance.healthFactor(cell.health());
        return aged.with("internal_mohm", growth * part.keys().number("internal_mohm", 0));
    }

    /** Mean current while the button is held, A. */
    private static double meanA(ResolvedCell cell, double swing, RunResult result) {
        double hours = result.last().firedS() / 3600;
        return hours > 0 ? swing * cell.capacityAh() / hours : 0;
    }

    private static boolean isWornOut(Scenario scenario) {
        return scenario.parts().stream().anyMatch(part -> part.keys().number("health", 1) <= LEAST_HEALTH);
    }
}
