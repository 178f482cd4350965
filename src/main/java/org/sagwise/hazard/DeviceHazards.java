package org.sagwise.hazard;

import static org.sagwise.hazard.Cures.Way.FEWER_WATTS;
import static org.sagwise.hazard.Cures.Way.LOWER_CHARGE;
import static org.sagwise.hazard.Cures.Way.METER_VOLTS;
import static org.sagwise.hazard.Cures.Way.MORE_OHMS;
import static org.sagwise.hazard.Cures.Way.TURN_CELLS;
import static org.sagwise.hazard.Cures.cures;
import static org.sagwise.hazard.Hides.island;
import static org.sagwise.hazard.Hides.parts;
import static org.sagwise.hazard.Signal.CAUTION;
import static org.sagwise.hazard.Signal.NOTICE;
import static org.sagwise.hazard.Signal.WARNING;
import static org.sagwise.hazard.Spends.Which.EVERY_PART;
import static org.sagwise.hazard.Spends.spends;
import static org.sagwise.hazard.Threshold.above;

import java.util.List;
import org.sagwise.hazard.Hazard.Listing;
import org.sagwise.part.MeterMode;
import org.sagwise.part.PartKind;
import org.sagwise.reading.Notice;

/** What can be wrong with devices that do something by themselves, and with meters. */
final class DeviceHazards {

    /** Volts from which on a circuit counts as alive to a meter on ohms, V: our choice. */
    private static final double ALIVE_V = 0.05;

    static final Section SECTION = new Section(
            "Boards, chargers, supplies, meters",
            List.of(
                    Hazard.of(
                            "board-asks-too-much",
                            75,
                            new Listing(
                                    "WARNING; DANGER from " + Listing.number(Gravity.HEAVY) + " times",
                                    "a board stops, and its watts over the rest volts of all cells are more amps than"
                                            + " their limits",
                                    "the cells' own; 1.5: our choice",
                                    "fewer watts, not fuller cells"),
                            new BoardAsksTooMuch(),
                            parts(WARNING, "board-trouble", "cell-empty"),
                            cures(FEWER_WATTS)),
                    Hazard.of(
                            "board-trouble",
                            390,
                            new Listing(
                                    "NOTICE; CAUTION if its output is shorted or too high",
                                    "the board stops, or cannot hold its power",
                                    "the board's own limits",
                                    "which limit, what to change"),
                            new BoardTrouble(),
                            island(CAUTION, "coil-bypassed"),
                            cures(FEWER_WATTS, MORE_OHMS)),
                    Hazard.of(
                            "no-steady-state",
                            270,
                            new Listing(
                                    "NOTICE", "boards or chargers that answer each other without end", "–", "which"),
                            new NoAnswer(Notice.Kind.NO_STEADY_STATE, NOTICE),
                            parts(NOTICE, "board-trouble")),
                    Hazard.of(
                            "charger-too-high",
                            120,
                            new Listing(
                                    "WARNING",
                                    "goes on to more than " + Listing.number(ChargerClimb.SLACK_V)
                                            + " V for each cell above full",
                                    "the cells' own; ± 0.05 V: typical, from memory",
                                    "it does not stop in time"),
                            ChargerClimb::tooHigh,
                            parts(WARNING, "cell-charged-above-full"),
                            cures(LOWER_CHARGE)),
                    Hazard.of(
                            "charger-reversed",
                            130,
                            new Listing("WARNING", "joined plus to minus", "–", "it empties instead"),
                            ChargerClimb::reversed,
                            island(WARNING, "cell-below-cutoff", "cell-driven-backwards"),
                            cures(TURN_CELLS)),
                    Hazard.of(
                            "supply-charges-cell",
                            140,
                            new Listing(
                                    "WARNING",
                                    "a bench supply pushes more than " + Listing.number(SupplyChargesCell.LEAST_A)
                                            + " A into a cell",
                                    "our choice",
                                    "nothing ends it"),
                            new SupplyChargesCell(),
                            parts(WARNING, "charge-over-limit"),
                            spends(WARNING, EVERY_PART)),
                    Hazard.of(
                            "meter-on-live-circuit",
                            450,
                            new Listing(
                                    "NOTICE",
                                    "a meter on ohms with more than " + Listing.number(ALIVE_V) + " V across it",
                                    "our choice",
                                    "take the cells out"),
                            new PartThreshold(
                                    PartKind.METER,
                                    above("V", PartView::voltsV, (PartView meter) -> ALIVE_V)
                                            .telling(meter -> Double.NaN)
                                            .where(meter -> meter.part().isTurnedTo(MeterMode.OHMS)),
                                    meter -> NOTICE,
                                    (caution, meter) -> {}),
                            cures(METER_VOLTS))));

    private DeviceHazards() {}
}
