package org.sagwise.run;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Something that happened during a run.
 *
 * @param atS when, seconds from the start of the run
 * @param part id of the part; of a link its id, or both its ends; empty if it concerns the bench
 * @param kind what
 * @param measured the number that tells it, in the unit of the kind; NaN if there is none
 * @param limit the number it is measured against, in the same unit; NaN if there is none
 */
public record RunEvent(double atS, String part, Kind kind, double measured, double limit) {

    /** What can happen. */
    public enum Kind {
        /** A cell's terminal voltage under load fell to the cut-off, V. */
        CUTOFF,
        /** A cell gave more than its continuous discharge limit, A. */
        OVER_LIMIT,
        /** A cell was charged with more than its highest charging current, A. */
        CHARGED_TOO_FAST,
        /** A cell's terminal voltage fell below what its maker allows at all, V. */
        BELOW_LOWEST,
        /** Others drove a cell below zero volts, V. */
        REVERSED,
        /** A cell fell so far below zero that copper dissolves inside it, V. */
        COPPER_DISSOLVES,
        /** Copper bridges a cell's electrodes: it is shorted inside from now on. */
        INTERNAL_SHORT,
        /** A cell's terminal voltage rose beyond what it bears without lasting harm, V. */
        OVERCHARGED,
        /** A cell was charged to where its own current interrupter acts, share of full. */
        INTERRUPTED,
        /** A cell became warmer than its maker allows while discharging, °C. */
        TOO_WARM,
        /** A cell's protective layer begins to break down, °C. */
        LAYER_BREAKDOWN,
        /** A cell's vent may open: the run ends here, °C. */
        VENTED,
        /** A cell's own PTC became so hot that it lets hardly anything pass, A. */
        CELL_PTC_TRIPPED,
        /** More volts than one cell gives stand across a cell's own PTC: it may burn through, V. */
        CELL_PTC_FAILED,
        /** A cell's own current interrupter opened it for good, share of full. */
        CID_OPENED,
        /** A protected cell opened because of its current, A. */
        GUARD_CURRENT,
        /** A protected cell opened because of a low voltage, V. */
        GUARD_LOW,
        /** A protected cell opened because of a high voltage, V. */
        GUARD_HIGH,
        /** A protected cell closed again after the load was gone. */
        GUARD_CLOSED,
        /** A fuse melted, A. */
        FUSE_BLOWN,
        /** A resettable fuse became so warm that it lets hardly anything pass, A. */
        PTC_TRIPPED,
        /** A resettable fuse that had tripped has cooled, °C. */
        PTC_RESET,
        /** A coil took more power than it is meant for, W. */
        COIL_OVER_LIMIT,
        /** A coil reached the melting point of its wire, °C. */
        COIL_MELTED,
        /** A jumper became hotter than common insulation bears, °C. */
        WIRE_HOT,
        /** A jumper reached the melting point of copper, °C. */
        WIRE_MELTED,
        /** A charger reached its limit voltage and holds it from now on, V. */
        CHARGER_HOLDS_VOLTAGE,
        /** A charger's current fell to its taper current and it switched off, A. */
        CHARGER_DONE,
        /** A board gives all the voltage it can and still less power than asked. */
        BOARD_AT_MAX,
        /** A board stopped because its input fell below its cut-off. */
        BOARD_CUTOFF,
        /** A board stopped because it would draw more than it may. */
        BOARD_INPUT_LIMIT,
        /** A board stopped because the pack cannot give the power at any voltage. */
        BOARD_NO_POWER,
        /** A board stopped because its output is shorted. */
        BOARD_SHORTED,
        /** No currents balance this bench: ideal parts contradict each other. */
        UNSOLVABLE;

        /** What opens a part of the circuit. */
        static final Set<Kind> OPENING = EnumSet.of(
                CID_OPENED,
                GUARD_CURRENT,
                GUARD_LOW,
                GUARD_HIGH,
                FUSE_BLOWN,
                COIL_MELTED,
                WIRE_MELTED,
                CHARGER_DONE,
                BOARD_CUTOFF,
                BOARD_INPUT_LIMIT,
                BOARD_NO_POWER,
                BOARD_SHORTED);

        /** What is undone when the button is let go. */
        static final Set<Kind> UNTIL_RELEASED =
                EnumSet.of(GUARD_CURRENT, BOARD_CUTOFF, BOARD_INPUT_LIMIT, BOARD_NO_POWER, BOARD_SHORTED);

        /** What this undoes: of a part that trips and comes back, one or the other has happened last. */
        Optional<Kind> undoes() {
            return switch (this) {
                case PTC_TRIPPED -> Optional.of(PTC_RESET);
                case PTC_RESET -> Optional.of(PTC_TRIPPED);
                default -> Optional.empty();
            };
        }

        /** What no run goes beyond: nobody should stay near it. */
        static final Set<Kind> FINAL = EnumSet.of(VENTED, INTERRUPTED, UNSOLVABLE);

        /** Whether it tells of danger from heat or misuse, with a time that is a band. */
        public boolean isStage() {
            return STAGES.contains(this);
        }

        /**
         * On what the limit rests that it passed. What happens by the circuit alone, or by a number
         * that the scenario gives, counts as published.
         */
        public Basis basis() {
            return switch (this) {
                case INTERNAL_SHORT, CELL_PTC_TRIPPED, CELL_PTC_FAILED -> Basis.TEACHING;
                case CUTOFF, OVERCHARGED, INTERRUPTED, CID_OPENED, LAYER_BREAKDOWN, VENTED, WIRE_HOT, FUSE_BLOWN ->
                    Basis.TYPICAL;
                default -> Basis.PUBLISHED;
            };
        }

        /** The word for it in machine-readable output, such as {@code fuse-blown}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        private static final Set<Kind> STAGES = EnumSet.of(
                TOO_WARM,
                LAYER_BREAKDOWN,
                VENTED,
                OVERCHARGED,
                INTERRUPTED,
                CID_OPENED,
                CELL_PTC_TRIPPED,
                CELL_PTC_FAILED,
                REVERSED,
                COPPER_DISSOLVES,
                INTERNAL_SHORT,
                COIL_MELTED,
                WIRE_HOT,
                WIRE_MELTED);
    }
}
