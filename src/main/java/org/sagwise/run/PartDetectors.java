package org.sagwise.run;

import static org.sagwise.run.EventDetector.Side.ABOVE;
import static org.sagwise.run.EventDetector.Side.BELOW;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.network.ChargerState;
import org.sagwise.network.ConverterState;
import org.sagwise.part.PartKind;
import org.sagwise.part.PtcSpec;
import org.sagwise.run.RunEvent.Kind;

/** What is looked out for at coils, wires, fuses of both sorts, chargers and boards. */
final class PartDetectors {

    /** What common insulation bears (PVC: 70 to 105 °C): from memory, no source at hand. */
    static final double INSULATION_C = 80;

    private final RunModel model;
    private final List<EventDetector> all = new ArrayList<>();

    private PartDetectors(RunModel model) {
        this.model = model;
    }

    static List<EventDetector> of(RunModel model) {
        PartDetectors detectors = new PartDetectors(model);
        detectors.coils();
        detectors.ptcs();
        detectors.wires();
        detectors.fuses();
        detectors.chargers();
        detectors.boards();
        return detectors.all;
    }

    private void add(Kind kind, String part, int place, EventDetector.Sight s, double limit, EventDetector.Side to) {
        all.add(EventDetector.on(kind, part, place, s, limit, to));
    }

    private void coils() {
        for (int k = 0; k < model.coils.size(); k++) {
            int place = k;
            String id = model.coils.get(k).part().id();
            model.limitW(id)
                    .ifPresent(limitW -> add(
                            Kind.COIL_OVER_LIMIT,
                            id,
                            place,
                            (x, now, p) -> now.coilA[place] * now.coilA[place] * now.coilOhm[place],
                            limitW,
                            ABOVE));
        }
        for (int k = 0; k < model.hotCoils.size(); k++) {
            int slot = model.layout.coil(k, StateLayout.HOT_C);
            HotModel coil = model.hotCoils.get(k);
            add(Kind.COIL_MELTED, coil.name(), k, (x, now, p) -> x[slot], coil.meltingC(), ABOVE);
        }
    }

    private void ptcs() {
        for (int k = 0; k < model.hotCoils.size(); k++) {
            int place = k;
            int slot = model.layout.coil(k, StateLayout.HOT_C);
            String id = model.hotCoils.get(k).name();
            if (model.bench.part(id).kind() == PartKind.PTC) {
                all.add(new EventDetector(
                        Kind.PTC_TRIPPED,
                        id,
                        k,
                        (x, now, p) -> x[slot],
                        PtcSpec.SWITCH_C,
                        ABOVE,
                        (x, now, p) -> Math.abs(now.hotCoilA[place]),
                        model.bench.spec(id, PtcSpec.class).holdA()));
                add(Kind.PTC_RESET, id, k, (x, now, p) -> x[slot], PtcSpec.resetC(model.ambientC), BELOW);
            }
        }
    }

    private void wires() {
        for (int k = 0; k < model.wires.size(); k++) {
            int slot = model.layout.wire(k, StateLayout.HOT_C);
            HotModel wire = model.wires.get(k);
            add(Kind.WIRE_HOT, wire.name(), k, (x, now, p) -> x[slot], INSULATION_C, ABOVE);
            add(Kind.WIRE_MELTED, wire.name(), k, (x, now, p) -> x[slot], wire.meltingC(), ABOVE);
        }
    }

    private void fuses() {
        for (int k = 0; k < model.fuses.size(); k++) {
            int place = k;
            int element = model.layout.fuse(k, StateLayout.ELEMENT);
            int holder = model.layout.fuse(k, StateLayout.HOLDER);
            RunModel.FuseModel fuse = model.fuses.get(k);
            all.add(new EventDetector(
                    Kind.FUSE_BLOWN,
                    fuse.id(),
                    k,
                    (x, now, p) -> x[element] + x[holder],
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
            EventDetector.Sight holding =
                    (x, now, p) -> now.chargers[place] == ChargerState.CONSTANT_VOLTAGE && now.chargerA[place] > 0
                            ? now.chargerA[place]
                            : Double.NaN;
            all.add(new EventDetector(
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
        EventDetector.Sight stands = (x, now, p) -> now.boards[k] == state ? 1 : 0;
        EventDetector.Sight nothing = (x, now, p) -> Double.NaN;
        all.add(new EventDetector(kind, model.boards.get(k), k, stands, 0.5, ABOVE, nothing, Double.NaN));
    }
}
