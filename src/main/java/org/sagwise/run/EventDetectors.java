package org.sagwise.run;

import static org.sagwise.run.EventDetector.Side.ABOVE;
import static org.sagwise.run.EventDetector.Side.BELOW;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.sagwise.part.Chemistry;
import org.sagwise.part.Distress;
import org.sagwise.part.Guard;
import org.sagwise.part.PtcSpec;
import org.sagwise.part.Reversal;
import org.sagwise.run.RunEvent.Kind;

/** Everything that is looked out for on a bench: at cells here, at other parts elsewhere. */
final class EventDetectors {

    /**
     * Voltage at which copper of the negative electrode dissolves: a reversed cell's minimum lies
     * at −1.3 to −1.5 V ("Elucidating Copper Dissolution…", J. Electrochem. Soc. 165(9), A1639,
     * 2018).
     */
    static final double COPPER_V = -1.3;

    private final RunModel model;
    private final List<EventDetector> all = new ArrayList<>();

    private EventDetectors(RunModel model) {
        this.model = model;
    }

    /**
     * The detectors of a bench.
     *
     * @param cutoffV cut-off for all cells instead of their own, V
     */
    static List<EventDetector> of(RunModel model, OptionalDouble cutoffV) {
        EventDetectors detectors = new EventDetectors(model);
        for (int k = 0; k < model.cells.size(); k++) {
            CellModel cell = model.cells.get(k);
            detectors.use(k, cell, cutoffV.orElse(cell.cell.spec().cutoffV()));
            detectors.charging(k, cell);
            detectors.heat(k, cell);
            if (cell.ptc != null) {
                detectors.ptc(k, cell);
            }
            if (cell.guard() != null) {
                detectors.guard(k, cell, cell.guard());
            }
        }
        detectors.all.addAll(PartDetectors.of(model));
        return List.copyOf(detectors.all);
    }

    private void add(Kind kind, String part, int place, EventDetector.Sight s, double limit, EventDetector.Side to) {
        all.add(EventDetector.on(kind, part, place, s, limit, to));
    }

    private int slot(int k, int quantity) {
        return model.layout.cell(k, quantity);
    }

    private static EventDetector.Sight discharging(int k) {
        return (x, now, press) -> now.cellA[k] > 0 ? now.cellV[k] : Double.NaN;
    }

    private void use(int k, CellModel cell, double cutoffV) {
        Chemistry chemistry = cell.cell.spec().chemistry();
        EventDetector.Sight loaded = discharging(k);
        add(
                Kind.CUTOFF,
                cell.id(),
                k,
                (x, now, press) -> press.isHeld() ? loaded.of(x, now, press) : Double.NaN,
                cutoffV,
                BELOW);
        add(Kind.BELOW_LOWEST, cell.id(), k, loaded, chemistry.lowestV(), BELOW);
        // A short too can press the terminals below zero; reversed is a cell that is empty as well.
        EventDetector.Sight emptied =
                (x, now, press) -> x[slot(k, StateLayout.CHARGE)] < 0 ? loaded.of(x, now, press) : Double.NaN;
        add(Kind.REVERSED, cell.id(), k, emptied, 0, BELOW);
        add(Kind.COPPER_DISSOLVES, cell.id(), k, emptied, COPPER_V, BELOW);
        EventDetector.Sight driven = (x, now, press) -> x[slot(k, StateLayout.DEPTH)];
        add(Kind.INTERNAL_SHORT, cell.id(), k, driven, Reversal.BRIDGE_DEPTH, ABOVE);
        double limitA = cell.cell.spec().limitA();
        if (!Double.isNaN(limitA)) {
            add(Kind.OVER_LIMIT, cell.id(), k, (x, now, p) -> now.cellA[k], limitA, ABOVE);
        }
    }

    private void charging(int k, CellModel cell) {
        double chargeLimitA = cell.cell.spec().chargeLimitA();
        Distress distress = cell.cell.spec().distress();
        add(Kind.CHARGED_TOO_FAST, cell.id(), k, (x, now, p) -> -now.cellA[k], chargeLimitA, ABOVE);
        add(
                Kind.OVERCHARGED,
                cell.id(),
                k,
                (x, now, p) -> now.cellA[k] < 0 ? now.cellV[k] : Double.NaN,
                Math.max(distress.overchargeV(), cell.cell.spec().fullV()),
                ABOVE);
        add(
                cell.cell.spec().hasCid() ? Kind.CID_OPENED : Kind.INTERRUPTED,
                cell.id(),
                k,
                (x, now, p) -> x[slot(k, StateLayout.CHARGE)],
                model.spread.within(distress.interrupterCharge()),
                ABOVE);
    }

    private void heat(int k, CellModel cell) {
        Distress distress = cell.cell.spec().distress();
        EventDetector.Sight warmth = (x, now, p) -> x[slot(k, StateLayout.CELL_C)];
        add(Kind.TOO_WARM, cell.id(), k, warmth, distress.dischargeLimitC(), ABOVE);
        double layerC = model.spread.within(distress.layerBreakdownC());
        add(Kind.LAYER_BREAKDOWN, cell.id(), k, warmth, layerC, ABOVE);
        add(Kind.VENTED, cell.id(), k, warmth, model.spread.within(distress.ventC()), ABOVE);
    }

    private void ptc(int k, CellModel cell) {
        double oneV = PtcSpec.CELL_MOST_FULL * cell.cell.spec().fullV();
        double openV = model.ptcOpenV(cell);
        EventDetector.Sight hot = (x, now, p) -> x[slot(k, StateLayout.PTC_C)];
        if (openV > oneV) {
            all.add(new EventDetector(
                    Kind.CELL_PTC_FAILED, cell.id(), k, hot, PtcSpec.SWITCH_C, ABOVE, (x, now, p) -> openV, oneV));
        } else {
            EventDetector.Sight mostA = (x, now, p) -> x[slot(k, StateLayout.PEAK_A)];
            all.add(new EventDetector(
                    Kind.CELL_PTC_TRIPPED, cell.id(), k, hot, PtcSpec.SWITCH_C, ABOVE, mostA, cell.ptc.holdA()));
        }
    }

    private void guard(int k, CellModel cell, Guard guard) {
        EventDetector.Sight ampere = (x, now, p) -> Math.abs(now.cellA[k]);
        EventDetector.Sight insideV = (x, now, p) -> now.cellV[k] + cell.guardOhm * now.cellA[k];
        timer(Kind.GUARD_CURRENT, k, StateLayout.OVER_CURRENT_S, ampere, guard.tripA());
        timer(Kind.GUARD_LOW, k, StateLayout.LOW_S, insideV, guard.underVoltageV());
        timer(Kind.GUARD_HIGH, k, StateLayout.HIGH_S, insideV, guard.overVoltageV());
    }

    private void timer(Kind kind, int k, int quantity, EventDetector.Sight shown, double shownLimit) {
        CellModel cell = model.cells.get(k);
        EventDetector.Sight waited = (x, now, p) -> x[slot(k, quantity)];
        double tripS = cell.guard().tripS();
        all.add(new EventDetector(kind, cell.id(), k, waited, tripS, ABOVE, shown, shownLimit));
    }
}
