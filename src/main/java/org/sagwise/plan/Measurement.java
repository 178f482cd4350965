package org.sagwise.plan;

import java.util.ArrayList;
import java.util.List;

/** Judges readings of a meter, and works out what follows from them if they agree. */
public final class Measurement {

    /** Cells of this trade rest between these, V; more is more than one cell, or a slip. */
    private static final double MOST_REST_V = 6;

    private Measurement() {}

    /** What came of readings. */
    public sealed interface Answer {

        /** They agree. */
        record Agreed(Measured measured) implements Answer {}

        /**
         * They contradict each other or what can be.
         *
         * @param contradictions every one of them, at least one
         */
        record Refused(List<Contradiction> contradictions) implements Answer {
            public Refused {
                contradictions = List.copyOf(contradictions);
            }
        }
    }

    /** How readings can contradict each other; the texts are in the bundle {@code plan}. */
    public enum Contradiction {
        /** No cell rests at or below zero in a circuit that gives current. */
        REST_NOT_POSITIVE,
        /** More than one cell can have. */
        REST_TOO_HIGH,
        /** Higher at the cell under load than at rest: taken in the wrong order, or swapped. */
        CELL_ABOVE_REST,
        /** Higher at the coil than at the cell: swapped, or not at the same press. */
        COIL_ABOVE_CELL,
        /** No volts at the coil, so no current: the circuit is open or a probe is off. */
        COIL_NOT_POSITIVE,
        /** A coil has ohms. */
        OHM_NOT_POSITIVE
    }

    /**
     * Works out what follows. A reading may lie beyond its neighbour by no more than the steps of
     * the meter; then they count as equal.
     */
    public static Answer of(MeterCheck check) {
        List<Contradiction> found = new ArrayList<>();
        double slack = check.voltsStep() * 1.0001;
        note(found, !(check.restV() > 0), Contradiction.REST_NOT_POSITIVE);
        note(found, check.restV() > MOST_REST_V, Contradiction.REST_TOO_HIGH);
        note(found, check.cellV() > check.restV() + slack, Contradiction.CELL_ABOVE_REST);
        note(found, !(check.coilV() > 0), Contradiction.COIL_NOT_POSITIVE);
        note(found, check.coilV() > check.cellV() + slack, Contradiction.COIL_ABOVE_CELL);
        note(found, !(check.coilOhm() > 0), Contradiction.OHM_NOT_POSITIVE);
        return found.isEmpty() ? new Answer.Agreed(Measured.of(settled(check))) : new Answer.Refused(found);
    }

    private static void note(List<Contradiction> found, boolean holds, Contradiction which) {
        if (holds) {
            found.add(which);
        }
    }

    private static MeterCheck settled(MeterCheck check) {
        double cellV = Math.min(check.cellV(), check.restV());
        return new MeterCheck(
                check.restV(),
                cellV,
                Math.min(check.coilV(), cellV),
                check.coilOhm(),
                check.voltsStep(),
                check.ohmStep());
    }
}
