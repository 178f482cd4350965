package org.sagwise.reading;

import java.util.Map;
import java.util.Set;

/**
 * State of everything that has one, at one moment: what time brings along. A scenario at the
 * instant of firing has relaxed cells and cold coils.
 *
 * @param cells state by cell id, every cell of the scenario
 * @param coilC temperature of a coil by id, °C; absent means 20 °C, the temperature its ohms are
 *     given at; that of a resettable fuse, absent means ambient
 * @param linkC temperature of a jumper by its place in the scenario, °C; absent means ambient
 * @param blownFuses ids of the fuses that have melted
 * @param broken what else lets nothing through any more
 */
public record States(
        Map<String, CellState> cells,
        Map<String, Double> coilC,
        Map<Integer, Double> linkC,
        Set<String> blownFuses,
        Broken broken) {

    /** A state in which nothing but fuses has opened. */
    public States(
            Map<String, CellState> cells,
            Map<String, Double> coilC,
            Map<Integer, Double> linkC,
            Set<String> blownFuses) {
        this(cells, coilC, linkC, blownFuses, Broken.NOTHING);
    }

    public States {
        cells = Map.copyOf(cells);
        coilC = Map.copyOf(coilC);
        linkC = Map.copyOf(linkC);
        blownFuses = Set.copyOf(blownFuses);
    }

    /** Whether the same things let current through as in another state of the same bench. */
    boolean isJoinedAs(States other) {
        return blownFuses.equals(other.blownFuses)
                && broken.equals(other.broken)
                && cells.keySet().stream()
                        .allMatch(id ->
                                cells.get(id).guard() == other.cells.get(id).guard());
    }
}
