package org.sagwise.hazard;

import static org.sagwise.hazard.Cures.Way.LIKE_CELL;
import static org.sagwise.hazard.Cures.Way.SAME_CHARGE;
import static org.sagwise.hazard.Cures.Way.TURN_CELLS;
import static org.sagwise.hazard.Cures.cures;
import static org.sagwise.hazard.Hides.island;
import static org.sagwise.hazard.Hides.moment;
import static org.sagwise.hazard.Hides.parts;
import static org.sagwise.hazard.Signal.CAUTION;
import static org.sagwise.hazard.Signal.NOTICE;
import static org.sagwise.hazard.Signal.WARNING;
import static org.sagwise.hazard.Spends.Which.FIRST_PART;
import static org.sagwise.hazard.Spends.Which.TURNED_PARTS;
import static org.sagwise.hazard.Spends.spends;

import java.util.List;
import org.sagwise.hazard.Hazard.Listing;
import org.sagwise.reading.ResolvedCell;

/** What can be wrong with cells that do not fit together. */
final class PackHazards {

    /** Ratio of capacities up to which cells count as alike: spread of one model, from memory. */
    private static final double ALIKE_CAPACITY = 1.05;

    /** Ratio of limits up to which cells count as alike: our choice. */
    private static final double ALIKE_LIMIT = 1.05;

    /** Difference of health up to which cells count as alike: common practice, no source. */
    private static final double ALIKE_HEALTH = 0.1;

    /** So that 1.0 beside 0.9 counts as no more than the difference it is meant to be. */
    private static final double ROUNDING = 1e-9;

    /**
     * Ratio of resistances up to which cells count as alike. A mismatch of 20 % shortened the life
     * of two cells side by side by some 40 % at 4.5 C (Gogoana, Pinson, Bazant and Sarma, Journal
     * of Power Sources 252 (2014) 8–13); resistances measured by hand scatter as much, so only half
     * as much again is called a mixed pack: our choice.
     */
    private static final double ALIKE_RESISTANCE = 1.5;

    static final Section SECTION = new Section(
            "Packs",
            List.of(
                    Hazard.of(
                            "reversed-in-series",
                            100,
                            new Listing(
                                    "NOTICE if as many stand each way and hardly a current flows; WARNING; DANGER"
                                            + " above `limit_A`",
                                    "cells of a row stand opposite ways",
                                    "Kirchhoff",
                                    "0 V and hardly a current, or charged backwards"),
                            new ReversedInSeries(),
                            parts(
                                    NOTICE,
                                    "cell-below-cutoff",
                                    "cell-driven-backwards",
                                    "cell-charged-above-full",
                                    "charge-over-limit",
                                    "unequal-charge-in-series"),
                            island(NOTICE, "board-trouble", "open-circuit"),
                            spends(WARNING, TURNED_PARTS),
                            cures(TURN_CELLS)),
                    Hazard.of(
                            "unequal-charge-in-parallel",
                            90,
                            new Listing(
                                    "WARNING; DANGER above `limit_A`",
                                    "current into the emptier cell above its `charge_limit_A`, most of it from other cells",
                                    "Kirchhoff: i = (E₁ − E₂)/(R₁ + R₂)",
                                    "how much flows"),
                            new UnequalChargeInParallel(),
                            parts(WARNING, "charge-over-limit", "cell-charged-above-full", "unequal-charge-in-series"),
                            moment(WARNING, "cell-over-limit", "cell-near-limit", "pulse-as-continuous"),
                            spends(WARNING, FIRST_PART),
                            cures(SAME_CHARGE)),
                    Hazard.of(
                            "unequal-charge-in-series",
                            320,
                            new Listing(
                                    "CAUTION; WARNING on a charger",
                                    "rest voltages in a row more than "
                                            + Listing.number(UnequalChargeInSeries.MOST_APART_V) + " V apart",
                                    "common practice, no source",
                                    "which is empty first, or overcharged"),
                            new UnequalChargeInSeries(),
                            cures(SAME_CHARGE)),
                    Hazard.of(
                            "mixed-chemistry",
                            250,
                            new Listing(
                                    "WARNING",
                                    "two chemistries in one pack",
                                    "Kuphaldt, Lessons in Electric Circuits I, on batteries: equal voltage side by"
                                            + " side, equal capacity in a row",
                                    "never mix"),
                            new MixedChemistry(),
                            parts(
                                    WARNING,
                                    "mixed-capacity",
                                    "mixed-limit",
                                    "mixed-resistance",
                                    "unequal-charge-in-series"),
                            cures(LIKE_CELL)),
                    Hazard.of(
                            "mixed-capacity",
                            280,
                            new Listing(
                                    "CAUTION",
                                    "more than " + Listing.percent(ALIKE_CAPACITY - 1) + " apart",
                                    "as before; 5 %: from memory",
                                    "the smaller suffers"),
                            new MixedNumbers(
                                    "Ah", cell -> cell.spec().capacityAh(), cells -> cells.ratio() > ALIKE_CAPACITY),
                            parts(CAUTION, "mixed-limit", "mixed-resistance"),
                            cures(LIKE_CELL)),
                    Hazard.of(
                            "mixed-limit",
                            290,
                            new Listing(
                                    "CAUTION",
                                    "more than " + Listing.percent(ALIKE_LIMIT - 1) + " apart",
                                    "our choice",
                                    "the weakest counts"),
                            new MixedNumbers("A", cell -> cell.spec().limitA(), cells -> cells.ratio() > ALIKE_LIMIT),
                            parts(CAUTION, "mixed-resistance"),
                            cures(LIKE_CELL)),
                    Hazard.of(
                            "mixed-health",
                            300,
                            new Listing(
                                    "CAUTION",
                                    "more than a tenth of the capacity apart",
                                    "common practice, no source",
                                    "keep pairs together"),
                            new MixedNumbers(
                                    "Share",
                                    ResolvedCell::health,
                                    cells -> cells.highest() - cells.lowest() > ALIKE_HEALTH + ROUNDING),
                            parts(CAUTION, "mixed-resistance"),
                            cures(LIKE_CELL)),
                    Hazard.of(
                            "married-apart",
                            305,
                            new Listing(
                                    "CAUTION",
                                    "a cell marked as married is used without all of its set, or with another",
                                    "common practice, no source",
                                    "keep the set together"),
                            new MarriedApart()),
                    Hazard.of(
                            "mixed-resistance",
                            310,
                            new Listing(
                                    "CAUTION",
                                    "one more than " + Listing.number(ALIKE_RESISTANCE) + " times the other",
                                    "Gogoana, Pinson, Bazant, Sarma, J. Power Sources 252 (2014) 8–13: 20 % cost 40 %"
                                            + " of life at 4.5 C; 1.5: our choice",
                                    "who carries most"),
                            new MixedNumbers(
                                    "Ohm",
                                    cell -> cell.spec().internalOhm(),
                                    cells -> cells.lowest() > 0 && cells.ratio() > ALIKE_RESISTANCE),
                            cures(LIKE_CELL))));

    private PackHazards() {}
}
