package org.sagwise.reading;

import java.util.List;
import java.util.OptionalInt;
import org.sagwise.scenario.Press;

/**
 * Potential along the way of the current: up through each cell to its rest voltage, down through
 * sag, contacts, wire, switch and coil, and back to where it began. Steps of the main way and of
 * every lane are differences of node potentials, so that they add up to zero around every loop.
 *
 * @param steps the main way once round, from the reference back to it
 * @param lanes cells and branches that stand side by side with a stretch of the main way
 * @param lowestV lowest potential on it, V
 * @param highestV highest potential on it, V
 */
public record Staircase(List<Step> steps, List<Lane> lanes, double lowestV, double highestV) {

    public Staircase {
        steps = List.copyOf(steps);
        lanes = List.copyOf(lanes);
    }

    /** What a step stands for. */
    public enum Kind {
        /** Rest voltage of a cell: up, or down through a cell that stands the wrong way round. */
        CELL(Sort.SOURCE),
        /** The part of a cell's voltage that its own current costs it. */
        SAG(Sort.SAG),
        SUPPLY(Sort.SOURCE),
        CONTACT(Sort.JOINT),
        WIRE(Sort.JOINT),
        SWITCH(Sort.IN_LINE),
        /**
         * A switch that is open, a reverse guard that blocks, or no part at all where a joint is
         * missing: the whole voltage stands across the gap.
         */
        GAP(Sort.GAP),
        FUSE(Sort.IN_LINE),
        GUARD(Sort.IN_LINE),
        METER(Sort.IN_LINE),
        BOARD(Sort.SOURCE),
        CHARGER(Sort.SOURCE),
        COIL(Sort.LOAD),
        RESISTOR(Sort.LOAD);

        private final Sort sort;

        Kind(Sort sort) {
            this.sort = sort;
        }

        /** What sort of step it is. */
        public Sort sort() {
            return sort;
        }
    }

    /** Sorts of steps, which look alike. */
    public enum Sort {
        SOURCE,
        SAG,
        JOINT,
        IN_LINE,
        GAP,
        LOAD
    }

    /**
     * One step.
     *
     * @param kind what it stands for
     * @param part id of the part, or empty for a link and for a missing joint
     * @param link place of the link in the scenario, or empty for a part
     * @param fromV potential before it, V
     * @param toV potential after it, V
     * @param currentA current along the way, A
     */
    public record Step(Kind kind, String part, OptionalInt link, double fromV, double toV, double currentA) {

        /** How far it goes up, V; negative is down. */
        public double riseV() {
            return toV - fromV;
        }
    }

    /**
     * A way beside a stretch of the main one.
     *
     * @param steps its steps, in the direction of the main way
     * @param afterStep number of steps of the main way before the stretch begins
     * @param untilStep number of steps of the main way before the stretch ends
     */
    public record Lane(List<Step> steps, int afterStep, int untilStep) {

        public Lane {
            steps = List.copyOf(steps);
        }
    }

    /** The stairs of a bench at its start, with the button as the scenario has it. */
    public static Staircase of(Bench bench) {
        return of(bench, bench.scenario().press());
    }

    /**
     * The stairs of a bench at its start. They follow the way that the current takes while the
     * button is held, so that they keep their shape when it is let go.
     */
    public static Staircase of(Bench bench, Press press) {
        return Instant.start(bench, press).staircase();
    }

    /** Nothing to climb: no source on the bench. */
    public static Staircase flat() {
        return new Staircase(List.of(), List.of(), 0, 0);
    }
}
