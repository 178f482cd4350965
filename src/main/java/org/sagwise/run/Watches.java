package org.sagwise.run;

import static org.sagwise.run.Watch.Side.ABOVE;
import static org.sagwise.run.Watch.Side.BELOW;

import org.sagwise.network.ChargerState;
import org.sagwise.network.ConverterState;
import org.sagwise.part.Chemistry;
import org.sagwise.part.Distress;
import org.sagwise.part.Guard;
import org.sagwise.reading.Press;
import org.sagwise.run.RunEvent.Kind;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Everything that is looked out for on a bench. */
final class Watches {

    /**
     * Voltage at which copper of the negative electrode dissolves: a reversed cell's minimum lies
     * at −1.3 to −1.5 V ("Elucidating Copper Dissolution…", J. Electrochem. Soc. 165(9), A1639,
     * 2018).
     */
    static final double COPPER_V = -1.3;

    /** What common insulation bears (PVC: 70 to 105 °C): from memory, no source at hand. */
    static final double INSULATION_C = 80;

    private final RunModel model;
    private final List<Watch> all = new ArrayList<>();

    private Watches(RunModel model) {
        this.model = model;
    }

    /**
     * The watches of a bench.
     *
     * @param cutoffV cut-off for all cells instead of their own, V
     */
    static List<Watch> of(RunModel model, OptionalDouble cutoffV) {
        Watches watches = new Watches(model);
        for (int k = 0; k < model.cells.size(); k++) {
            CellModel cell = model.cells.get(k);
            watches.use(k, cell, cutoffV.orElse(cell.cell.spec().cutoffV()));
            watches.charging(k, cell);
            watches.heat(k, cell);
            if (cell.guard() != null) {
                watches.guard(k, cell, cell.guard());
            }
        }
        watches.coils();
        watches.wires();
        watches.fuses();
        watches.chargers();
        watches.boards();
        return List.copyOf(watches.all);
    }

    private void add(
            Kind kind, String part, int place, Watch.Sight s, double limit, Watch.Side to) {
        all.add(Watch.on(kind, part, place, s, limit, to));
    }

    private int slot(int k, int quantity) {
        return model.slots.cell(k, quantity);
    }

    private static Watch.Sight discharging(int k) {
        return (x, now, press) -> now.cellA[k] > 0 ? now.cellV[k] : Double.NaN;
    }

    private void use(int k, CellModel cell, double cutoffV) {
        Chemistry chemistry = cell.cell.spec().chemistry();
        Watch.Sight loaded = discharging(k);
        add(
                Kind.CUTOFF,
                cell.id(),
                k,
                (x, now, press) -> press == Press.HELD ? loaded.of(x, now, press) : Double.NaN,
                cutoffV,
                BELOW);
        add(Kind.BELOW_LOWEST, cell.id(), k, loaded, chemistry.lowestV(), BELOW);
        // A short too can press the terminals below zero; reversed is a cell that is empty as well.
        Watch.Sight emptied =
                (x, now, press) ->
                        x[slot(k, Slots.CHARGE)] < 0 ? loaded.of(x, now, press) : Double.NaN;
        add(Kind.REVERSED, cell.id(), k, emptied, 0, BELOW);
        add(Kind.COPPER_DISSOLVES, cell.id(), k, emptied, COPPER_V, BELOW);
        double limitA = cell.cell.spec().limitA();
        add(Kind.OVER_LIMIT, cell.id(), k, (x, now, p) -> now.cellA[k], limitA, ABOVE);
    }

    private void charging(int k, CellModel cell) {
        double chargeLimitA = cell.cell.spec().chargeLimitA();
        Distress distress = cell.cell.spec().chemistry().distress();
        add(Kind.CHARGED_TOO_FAST, cell.id(), k, (x, now, p) -> -now.cellA[k], chargeLimitA, ABOVE);
        add(
                Kind.OVERCHARGED,
                cell.id(),
                k,
                (x, now, p) -> now.cellA[k] < 0 ? now.cellV[k] : Double.NaN,
                Math.max(distress.overchargeV(), cell.cell.spec().fullV()),
                ABOVE);
        add(
                Kind.INTERRUPTED,
                cell.id(),
                k,
                (x, now, p) -> x[slot(k, Slots.CHARGE)],
                model.spread.within(distress.interrupterCharge()),
                ABOVE);
    }

    private void heat(int k, CellModel cell) {
        Distress distress = cell.cell.spec().chemistry().distress();
        Watch.Sight warmth = (x, now, p) -> x[slot(k, Slots.CELL_C)];
        add(Kind.TOO_WARM, cell.id(), k, warmth, distress.dischargeLimitC(), ABOVE);
        double layerC = model.spread.within(distress.layerBreakdownC());
        add(Kind.LAYER_BREAKDOWN, cell.id(), k, warmth, layerC, ABOVE);
        add(Kind.VENTED, cell.id(), k, warmth, model.spread.within(distress.ventC()), ABOVE);
    }

    private void guard(int k, CellModel cell, Guard guard) {
        Watch.Sight ampere = (x, now, p) -> Math.abs(now.cellA[k]);
        Watch.Sight insideV = (x, now, p) -> now.cellV[k] + cell.guardOhm * now.cellA[k];
        timer(Kind.GUARD_CURRENT, k, Slots.OVER_CURRENT_S, ampere, guard.tripA());
        timer(Kind.GUARD_LOW, k, Slots.LOW_S, insideV, guard.underVoltageV());
        timer(Kind.GUARD_HIGH, k, Slots.HIGH_S, insideV, guard.overVoltageV());
    }

    private void timer(Kind kind, int k, int quantity, Watch.Sight shown, double shownLimit) {
        CellModel cell = model.cells.get(k);
        Watch.Sight waited = (x, now, p) -> x[slot(k, quantity)];
        double tripS = cell.guard().tripS();
        all.add(new Watch(kind, cell.id(), k, waited, tripS, ABOVE, shown, shownLimit));
    }

    private void coils() {
        for (int k = 0; k < model.coils.size(); k++) {
            int place = k;
            String id = model.coils.get(k).part().id();
            model.limitW(id)
                    .ifPresent(
                            limitW ->
                                    add(
                                            Kind.COIL_OVER_LIMIT,
                                            id,
                                            place,
                                            (x, now, p) ->
                                                    now.coilA[place]
                                                            * now.coilA[place]
                                                            * now.coilOhm[place],
                                            limitW,
                                            ABOVE));
        }
        for (int k = 0; k < model.hotCoils.size(); k++) {
            int slot = model.slots.coil(k, Slots.HOT_C);
            HotModel coil = model.hotCoils.get(k);
            add(Kind.COIL_MELTED, coil.name(), k, (x, now, p) -> x[slot], coil.meltingC(), ABOVE);
        }
    }

    private void wires() {
        for (int k = 0; k < model.wires.size(); k++) {
            int slot = model.slots.wire(k, Slots.HOT_C);
            HotModel wire = model.wires.get(k);
            add(Kind.WIRE_HOT, wire.name(), k, (x, now, p) -> x[slot], INSULATION_C, ABOVE);
            add(Kind.WIRE_MELTED, wire.name(), k, (x, now, p) -> x[slot], wire.meltingC(), ABOVE);
        }
    }

    private void fuses() {
        for (int k = 0; k < model.fuses.size(); k++) {
            int place = k;
            int slot = model.slots.fuse(k);
            RunModel.FuseModel fuse = model.fuses.get(k);
            all.add(
                    new Watch(
                            Kind.FUSE_BLOWN,
                            fuse.id(),
                            k,
                            (x, now, p) -> x[slot],
                            1,
                            ABOVE,
                            (x, now, p) -> Math.abs(now.fuseA[place]),
                            fuse.melting().ratingA()));
        }
    }

    private void chargers() {
        for (int k = 0; k < model.chargers.size(); k++) {
            int place = k;
            RunModel.ChargerModel charger = model.chargers.get(k);
            Watch.Sight holding =
                    (x, now, p) ->
                            now.chargers[place] == ChargerState.CONSTANT_VOLTAGE
                                            && now.chargerA[place] > 0
                                    ? now.chargerA[place]
                                    : Double.NaN;
            all.add(
                    new Watch(
                            Kind.CHARGER_HOLDS_VOLTAGE,
                            charger.id(),
                            k,
                            holding,
                            0,
                            ABOVE,
                            (x, now, p) -> charger.charger().limitV(),
                            charger.charger().limitV()));
            add(Kind.CHARGER_DONE, charger.id(), k, holding, charger.charger().taperA(), BELOW);
        }
    }

    private void boards() {
        for (int k = 0; k < model.boards.size(); k++) {
            board(Kind.BOARD_AT_MAX, k, ConverterState.OUTPUT_AT_MAX);
            board(Kind.BOARD_CUTOFF, k, ConverterState.STOPPED_CUTOFF);
            board(Kind.BOARD_INPUT_LIMIT, k, ConverterState.STOPPED_INPUT_LIMIT);
            board(Kind.BOARD_NO_POWER, k, ConverterState.STOPPED_NO_SOLUTION);
            board(Kind.BOARD_NO_POWER, k, ConverterState.STOPPED_UNSETTLED);
            board(Kind.BOARD_SHORTED, k, ConverterState.STOPPED_OUTPUT_SHORTED);
        }
    }

    private void board(Kind kind, int k, ConverterState state) {
        Watch.Sight stands = (x, now, p) -> now.boards[k] == state ? 1 : 0;
        Watch.Sight nothing = (x, now, p) -> Double.NaN;
        all.add(new Watch(kind, model.boards.get(k), k, stands, 0.5, ABOVE, nothing, Double.NaN));
    }
}
