package org.sagwise.hazard;

import static org.sagwise.hazard.CellThreshold.always;
import static org.sagwise.hazard.CellThreshold.ofCurrent;
import static org.sagwise.hazard.CellThreshold.ofState;
import static org.sagwise.hazard.Cures.Way.FEWER_WATTS;
import static org.sagwise.hazard.Cures.Way.FULL_CHARGE;
import static org.sagwise.hazard.Cures.Way.JOINT_AWAY;
import static org.sagwise.hazard.Cures.Way.MORE_OHMS;
import static org.sagwise.hazard.Cures.Way.SAME_CHARGE;
import static org.sagwise.hazard.Cures.Way.SLOWER_CHARGE;
import static org.sagwise.hazard.Cures.Way.SOUND_CELL;
import static org.sagwise.hazard.Cures.Way.SOUND_WRAP;
import static org.sagwise.hazard.Cures.Way.WARM_UP;
import static org.sagwise.hazard.Cures.cures;
import static org.sagwise.hazard.Hides.island;
import static org.sagwise.hazard.Hides.parts;
import static org.sagwise.hazard.Signal.CAUTION;
import static org.sagwise.hazard.Signal.DANGER;
import static org.sagwise.hazard.Signal.NOTICE;
import static org.sagwise.hazard.Signal.WARNING;
import static org.sagwise.hazard.Spends.Which.EVERY_PART;
import static org.sagwise.hazard.Spends.spends;
import static org.sagwise.hazard.Threshold.above;
import static org.sagwise.hazard.Threshold.below;

import java.util.List;
import org.sagwise.hazard.Hazard.Listing;
import org.sagwise.part.Guard;
import org.sagwise.part.Pulse;

/** What can be wrong with a single cell. */
final class CellHazards {

    /** What a full cell may be above its full voltage, V: makers ask for 4.20 ± 0.05 V, from memory. */
    static final double FULL_SLACK_V = 0.05;

    /** Temperature below which the cold is worth a word, °C: our choice. */
    static final double COLD_C = 0;

    /** Volts below which the terminals of a cell count as reversed, V: beyond what rounding can do. */
    private static final double REVERSED_V = -1e-3;

    /** So that a charger of exactly the limit passes. */
    private static final double ROUNDING = 1 + 1e-6;

    /** Amps from which on a cell of unknown limit is worth a word, A: our choice. */
    private static final double TOLD_A = 0.5;

    private static final String FULL_SOURCE = "the cell's own; ± 0.05 V: typical of data sheets, from memory";

    static final Section SECTION = new Section(
            "Cells",
            List.of(
                    Hazard.of(
                            "cell-over-limit",
                            70,
                            new Listing(
                                    "WARNING; DANGER from " + Listing.number(Gravity.HEAVY) + " times",
                                    "above `limit_A`",
                                    "the cell's own; 1.5: our choice",
                                    "amps against limit"),
                            ofCurrent(
                                            above("A", CellView::currentA, CellView::limitA)
                                                    .where(cell -> !isPulse(cell)),
                                            cell -> Gravity.drawn(cell.currentA(), cell.limitA()))
                                    .with((caution, worst) ->
                                            caution.oneOrMany().detail("heatW", worst.heatW())),
                            island(WARNING, "cell-near-limit"),
                            spends(DANGER, EVERY_PART),
                            cures(MORE_OHMS, FEWER_WATTS)),
                    Hazard.of(
                            "cell-near-limit",
                            330,
                            new Listing(
                                    "CAUTION",
                                    "above " + Listing.percent(Gravity.NEAR) + " of `limit_A`",
                                    "the cell's own; 80 %: common practice, no source",
                                    "little is left"),
                            ofCurrent(
                                    above("A", CellView::currentA, cell -> Gravity.NEAR * cell.limitA())
                                            .telling(CellView::limitA)
                                            .where(cell -> cell.currentA() <= cell.limitA()),
                                    always(CAUTION)),
                            cures(MORE_OHMS, FEWER_WATTS)),
                    Hazard.of(
                            "limit-unknown",
                            335,
                            new Listing(
                                    "CAUTION",
                                    "gives more than " + Listing.number(TOLD_A) + " A, and no `limit_A` is known",
                                    "our choice",
                                    "look it up first"),
                            ofCurrent(
                                    above("A", CellView::currentA, (CellView cell) -> TOLD_A)
                                            .telling(cell -> Double.NaN)
                                            .where(cell -> Double.isNaN(cell.limitA())),
                                    always(CAUTION))),
                    Hazard.of(
                            "pulse-as-continuous",
                            80,
                            new Listing(
                                    "WARNING",
                                    "above `limit_A`, up to `pulse_A`",
                                    "the cell's own",
                                    "a pulse is no steady current"),
                            ofCurrent(
                                            above("A", CellView::currentA, CellView::limitA)
                                                    .where(CellHazards::isPulse),
                                            always(WARNING))
                                    .with((caution, worst) ->
                                            pulse(caution, worst.spec().pulse().orElseThrow())),
                            island(WARNING, "cell-near-limit"),
                            cures(MORE_OHMS, FEWER_WATTS)),
                    Hazard.of(
                            "guard-trip",
                            400,
                            new Listing(
                                    "NOTICE",
                                    "above the guard's `trip_A`",
                                    "the cell's own; about 10 A for common ones: common practice, no source",
                                    "it will switch off"),
                            ofCurrent(above("A", cell -> Math.abs(cell.currentA()), CellHazards::tripA), always(NOTICE))
                                    .with((caution, worst) -> caution.detail(
                                            "tripS",
                                            worst.spec().guard().orElseThrow().tripS())),
                            cures(MORE_OHMS, FEWER_WATTS)),
                    Hazard.of(
                            "label-claims",
                            240,
                            new Listing(
                                    "WARNING",
                                    "`claimed_A` above `limit_A`; `claimed_mAh` more than "
                                            + Listing.percent(LabelClaims.CAPACITY_SPREAD)
                                            + " above `capacity_mAh`, or above " + LabelClaims.mostCapacities(),
                                    "US CPSC, 8 January 2021, on re-wrapped cells; the numbers: common practice,"
                                            + " no source",
                                    "the wrap lies"),
                            new LabelClaims(),
                            cures(SOUND_CELL)),
                    Hazard.of(
                            "charge-over-limit",
                            110,
                            new Listing(
                                    "WARNING; DANGER above `limit_A`",
                                    "current into the cell above `charge_limit_A`",
                                    "the cell's own; else half its capacity an hour, the standard charge on a maker's"
                                            + " data sheet",
                                    "charged too fast"),
                            ofCurrent(
                                    above(
                                                    "A",
                                                    CellView::chargeA,
                                                    cell -> cell.spec().chargeLimitA() * ROUNDING)
                                            .telling(cell -> cell.spec().chargeLimitA()),
                                    cell -> Gravity.pushedIn(cell.chargeA(), cell.limitA())),
                            spends(WARNING, EVERY_PART),
                            cures(SLOWER_CHARGE)),
                    Hazard.of(
                            "cell-empty",
                            420,
                            new Listing(
                                    "NOTICE",
                                    "rests below its cut-off",
                                    "the cell's own; 3.2 V for use: common practice, no source",
                                    "charge it"),
                            ofState(
                                    below(
                                                    "V",
                                                    CellView::restV,
                                                    cell -> cell.spec().cutoffV())
                                            .where(cell -> cell.restV() >= deepV(cell)),
                                    always(NOTICE)),
                            parts(NOTICE, "cell-below-cutoff", "unequal-charge-in-series"),
                            cures(FULL_CHARGE)),
                    Hazard.of(
                            "cell-deep-discharged",
                            210,
                            new Listing(
                                    "WARNING",
                                    "rests below 2.0 V",
                                    "common practice, no source; copper dissolution: J. Electrochem. Soc. 165(9),"
                                            + " A1639 (2018)",
                                    "do not charge it"),
                            ofState(below("V", CellView::restV, CellHazards::deepV), always(WARNING)),
                            parts(NOTICE, "cell-below-cutoff", "unequal-charge-in-series"),
                            spends(WARNING, EVERY_PART),
                            cures(SOUND_CELL)),
                    Hazard.of(
                            "cell-below-cutoff",
                            430,
                            new Listing(
                                    "NOTICE",
                                    "terminal voltage below the cut-off while it gives current",
                                    "as `cell-empty`",
                                    "the device should stop"),
                            ofCurrent(
                                            below(
                                                            "V",
                                                            CellView::terminalV,
                                                            cell -> cell.spec().cutoffV())
                                                    .where(cell -> cell.gives() && cell.terminalV() >= 0),
                                            always(NOTICE))
                                    .with((caution, worst) -> caution.detail("restV", worst.restV())),
                            cures(SAME_CHARGE, FULL_CHARGE, MORE_OHMS, FEWER_WATTS)),
                    Hazard.of(
                            "cell-driven-backwards",
                            200,
                            new Listing(
                                    "WARNING",
                                    "terminal voltage below zero while it gives current",
                                    "J. Electrochem. Soc. 165(9), A1639 (2018)",
                                    "driven on though empty"),
                            ofCurrent(
                                            below("V", CellView::terminalV, cell -> REVERSED_V)
                                                    .telling(cell -> 0)
                                                    .where(CellView::gives),
                                            always(WARNING))
                                    .with((caution, worst) -> caution.detail("currentA", worst.currentA())),
                            parts(WARNING, "cell-deep-discharged", "cell-empty", "unequal-charge-in-series"),
                            spends(WARNING, EVERY_PART),
                            cures(SOUND_CELL)),
                    Hazard.of(
                            "cell-above-full",
                            150,
                            new Listing(
                                    "WARNING",
                                    "rests more than " + Listing.number(FULL_SLACK_V) + " V above full",
                                    FULL_SOURCE,
                                    "overcharged"),
                            ofState(
                                    above("V", CellView::restV, CellHazards::mostV)
                                            .telling(cell -> cell.spec().fullV()),
                                    always(WARNING)),
                            spends(WARNING, EVERY_PART),
                            cures(SOUND_CELL)),
                    Hazard.of(
                            "cell-charged-above-full",
                            160,
                            new Listing(
                                    "WARNING",
                                    "charged to more than " + Listing.number(FULL_SLACK_V) + " V above full",
                                    "as before",
                                    "stop the charge"),
                            ofCurrent(
                                    above("V", CellView::terminalV, CellHazards::mostV)
                                            .telling(cell -> cell.spec().fullV())
                                            .where(cell -> cell.takes() && cell.restV() <= mostV(cell)),
                                    always(WARNING)),
                            spends(WARNING, EVERY_PART)),
                    Hazard.of(
                            "cell-cold",
                            170,
                            new Listing(
                                    "NOTICE",
                                    "below " + Listing.number(COLD_C) + " °C",
                                    "our choice; resistance rises by Arrhenius' law, see the model notes",
                                    "sags more"),
                            ofState(below("°C", CellView::temperatureC, cell -> COLD_C), always(NOTICE))
                                    .with((caution, worst) -> caution.detail(
                                            "internalOhm", worst.reading().internalOhm())),
                            cures(WARM_UP)),
                    Hazard.of(
                            "cell-hot",
                            180,
                            new Listing(
                                    "WARNING; DANGER from 110 °C",
                                    "above 60 °C, high-drain cells above 75 °C; where the vent may open",
                                    "data sheets; the vent from memory",
                                    "leave it alone"),
                            ofState(
                                    above(
                                            "°C",
                                            CellView::temperatureC,
                                            cell -> cell.distress().dischargeLimitC()),
                                    cell -> Gravity.temperature(cell.temperatureC(), cell.distress())),
                            spends(DANGER, EVERY_PART),
                            cures(SOUND_CELL)),
                    Hazard.of(
                            "charging-temperature",
                            190,
                            new Listing(
                                    "WARNING below, CAUTION above",
                                    "charged below 0 °C or above 45 °C",
                                    "typical of data sheets, from memory",
                                    "when to charge"),
                            new ChargingTemperature(),
                            parts(WARNING, "cell-cold"),
                            cures(WARM_UP)),
                    Hazard.of(
                            "torn-wrap",
                            370,
                            new Listing("CAUTION", "the wrap is torn", "–", "what a tear can do"),
                            TornWrapTouching::torn,
                            cures(SOUND_WRAP)),
                    Hazard.of(
                            "joint-on-sound-wrap",
                            440,
                            new Listing(
                                    "NOTICE",
                                    "something is joined to the can of a sound wrap",
                                    "–",
                                    "the wrap keeps it apart"),
                            new JointOnWrap(),
                            cures(JOINT_AWAY))));

    private CellHazards() {}

    /** Whether a current over the continuous limit is still within the pulse rating. */
    private static boolean isPulse(CellView cell) {
        return cell.currentA() <= cell.spec().pulse().map(Pulse::currentA).orElse(Double.NaN);
    }

    private static void pulse(CautionBuilder caution, Pulse pulse) {
        caution.detail("pulseA", pulse.currentA()).detail("pulseS", pulse.durationS());
    }

    private static double tripA(CellView cell) {
        return cell.spec().guard().map(Guard::tripA).orElse(Double.POSITIVE_INFINITY);
    }

    private static double deepV(CellView cell) {
        return cell.distress().doNotRechargeBelowV();
    }

    private static double mostV(CellView cell) {
        return cell.spec().fullV() + FULL_SLACK_V;
    }
}
