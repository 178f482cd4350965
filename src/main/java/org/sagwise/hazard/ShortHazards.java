package org.sagwise.hazard;

import static org.sagwise.hazard.Cures.Way.JOINT_AWAY;
import static org.sagwise.hazard.Cures.Way.METER_VOLTS;
import static org.sagwise.hazard.Cures.Way.MORE_OHMS;
import static org.sagwise.hazard.Cures.Way.SOUND_WRAP;
import static org.sagwise.hazard.Cures.Way.TURN_CELLS;
import static org.sagwise.hazard.Cures.cures;
import static org.sagwise.hazard.Hides.island;
import static org.sagwise.hazard.Hides.parts;
import static org.sagwise.hazard.Signal.DANGER;
import static org.sagwise.hazard.Signal.WARNING;
import static org.sagwise.hazard.Spends.Which.EVERY_PART;
import static org.sagwise.hazard.Spends.spends;

import java.util.List;
import org.sagwise.hazard.Hazard.Listing;
import org.sagwise.reading.Notice;

/** Currents that nothing but resistance limits. */
final class ShortHazards {

    private static final String OVER_LIMIT = "WARNING; DANGER over the cell's limit";

    /** Whatever a current that no load limits brings about. */
    private static final Hides WHAT_A_SHORT_DOES = island(
            WARNING,
            "cell-over-limit",
            "cell-near-limit",
            "limit-unknown",
            "pulse-as-continuous",
            "cell-below-cutoff",
            "cell-driven-backwards",
            "cell-charged-above-full",
            "charge-over-limit",
            "charging-temperature",
            "unequal-charge-in-parallel",
            "supply-charges-cell",
            "jumper-over-ampacity",
            "jumper-over-fusing",
            "joint-hot",
            "board-asks-too-much",
            "board-trouble",
            "open-circuit",
            "sources-disagree");

    private static final Hides WHAT_FIGHTING_CELLS_DO = parts(
            WARNING,
            "mixed-chemistry",
            "mixed-capacity",
            "mixed-limit",
            "mixed-health",
            "mixed-resistance",
            "reversed-in-series",
            "unequal-charge-in-series");

    static final Section SECTION = new Section(
            "Currents that no load limits",
            List.of(
                    Hazard.of(
                            "pack-shorted",
                            30,
                            new Listing(
                                    OVER_LIMIT,
                                    "metal joins plus and minus and " + Listing.number(PackShorted.LEAST_A)
                                            + " A or more flows; or coils of less than "
                                            + Listing.number(LoadShorts.LEAST_SENSIBLE_OHM)
                                            + " Ω together, for which a cell is over its limit",
                                    "less than 0.1 Ω: UN Manual of Tests and Criteria, 38.3, test T.5; 80 ±"
                                            + " 20 mΩ: IEC 62133, both as quoted by test houses",
                                    "short circuit"),
                            new PackShorted(),
                            parts(WARNING, "coil-over-limit"),
                            island(WARNING, "coil-bypassed"),
                            WHAT_A_SHORT_DOES,
                            spends(WARNING, EVERY_PART),
                            cures(JOINT_AWAY, MORE_OHMS)),
                    Hazard.of(
                            "coil-bypassed",
                            20,
                            new Listing(
                                    "NOTICE; WARNING or DANGER if it shorts a cell",
                                    "metal leads round a coil, which gets less than "
                                            + Listing.percent(CoilBypassed.MOST_SHARE) + " of the current",
                                    "the cell's own; 10 %: our choice",
                                    "where the current goes instead"),
                            new CoilBypassed(),
                            parts(WARNING, "pack-shorted"),
                            WHAT_A_SHORT_DOES,
                            spends(WARNING, EVERY_PART),
                            cures(JOINT_AWAY)),
                    Hazard.of(
                            "torn-wrap-touching",
                            40,
                            new Listing(
                                    OVER_LIMIT,
                                    "a torn can is joined to anything but its own minus",
                                    "the cell's own; the can is minus on common round cells: from memory",
                                    "what it touches, and what flows"),
                            new TornWrapTouching(),
                            island(
                                    DANGER,
                                    "pack-shorted",
                                    "reversed-in-parallel",
                                    "unequal-rows-in-parallel",
                                    "coil-bypassed"),
                            WHAT_A_SHORT_DOES,
                            parts(WARNING, "torn-wrap"),
                            spends(DANGER, EVERY_PART),
                            cures(SOUND_WRAP)),
                    Hazard.of(
                            "meter-across-cell",
                            50,
                            new Listing(
                                    OVER_LIMIT,
                                    "a meter on amps carries half or more of a short that is gone without it",
                                    "OpenStax, University Physics Volume 2, section 10.4",
                                    "a meter on amps is nearly a wire"),
                            new MeterOnAmps(),
                            island(WARNING, "pack-shorted", "coil-bypassed"),
                            WHAT_A_SHORT_DOES,
                            spends(WARNING, EVERY_PART),
                            cures(METER_VOLTS)),
                    Hazard.of(
                            "reversed-in-parallel",
                            10,
                            new Listing(
                                    OVER_LIMIT,
                                    "a way round through cells does not balance, and turning a cell cures it",
                                    "Kirchhoff: i = (E₁ + E₂)/(R₁ + R₂)",
                                    "which cell to turn"),
                            ConflictCurrent::reversed,
                            WHAT_A_SHORT_DOES,
                            WHAT_FIGHTING_CELLS_DO,
                            spends(WARNING, EVERY_PART),
                            cures(TURN_CELLS)),
                    Hazard.of(
                            "unequal-rows-in-parallel",
                            60,
                            new Listing(
                                    OVER_LIMIT,
                                    "as before, and turning no single cell cures it",
                                    "Kirchhoff",
                                    "rows of different length"),
                            ConflictCurrent::unequalRows,
                            WHAT_A_SHORT_DOES,
                            WHAT_FIGHTING_CELLS_DO,
                            spends(WARNING, EVERY_PART)),
                    Hazard.of(
                            "sources-disagree",
                            260,
                            new Listing(
                                    "WARNING",
                                    "sources without internal resistance ask for different volts",
                                    "no answer in ideal parts",
                                    "give them resistance"),
                            new NoAnswer(Notice.Kind.IDEAL_SOURCES_DISAGREE, WARNING))));

    private ShortHazards() {}
}
