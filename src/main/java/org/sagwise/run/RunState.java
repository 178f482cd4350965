package org.sagwise.run;

import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.sagwise.reading.Broken;
import org.sagwise.reading.CellState;
import org.sagwise.reading.States;
import org.sagwise.run.RunEvent.Kind;
import org.sagwise.scenario.Press;

/**
 * A bench at one moment of a run: everything needed to go on from here. A value: it never changes,
 * may be kept and gone back to, and going on from it twice gives the same bits twice. It belongs to
 * the stepper that made it, or to any other of the same bench and settings.
 */
public final class RunState {

    final RunModel model;
    final List<EventDetector> detectors;
    final double[] x;
    final BitSet marks;
    final Instant now;
    final StepSize stepSize;
    private final double timeS;
    private final Press press;
    private final int presses;

    RunState(
            RunModel model,
            List<EventDetector> detectors,
            double timeS,
            Press press,
            int presses,
            double[] x,
            BitSet marks,
            Instant now,
            StepSize stepSize) {
        this.model = model;
        this.detectors = detectors;
        this.timeS = timeS;
        this.press = press;
        this.presses = presses;
        this.x = x;
        this.marks = marks;
        this.now = now;
        this.stepSize = stepSize;
    }

    /** Whether this is the very moment with these numbers. */
    boolean isAt(double otherS, double[] numbers, Instant instant) {
        return timeS == otherS && x == numbers && now == instant;
    }

    /** Time since the start of the run, s. */
    public double timeS() {
        return timeS;
    }

    /** Whether the button is held. */
    public Press press() {
        return press;
    }

    /** How often the button has been pressed. */
    public int presses() {
        return presses;
    }

    /** How long the button has been held in all, s. */
    public double firedS() {
        return x[model.layout.firedS];
    }

    /** Whether the run cannot go on: a cell vented, or no currents balance the bench. */
    public boolean isOver() {
        return Kind.FINAL.stream().anyMatch(this::has);
    }

    /** Whether something of this kind has happened, and has not been undone since. */
    public boolean has(Kind kind) {
        return marks.stream().anyMatch(i -> detectors.get(i).kind() == kind)
                || (kind == Kind.UNSOLVABLE && !now.solved);
    }

    /** Whether this has happened to a part, and has not been undone since. */
    public boolean has(Kind kind, String part) {
        return marks.stream()
                .mapToObj(detectors::get)
                .anyMatch(detector -> detector.kind() == kind && detector.part().equals(part));
    }

    /** Whether there are chargers and every one of them has finished. */
    public boolean allChargersDone() {
        return !model.chargers.isEmpty() && marked(Kind.CHARGER_DONE).size() == model.chargers.size();
    }

    /** Largest current through anything at this moment, A. */
    public double largestCurrentA() {
        return now.largestA;
    }

    /** All cells at this moment, in file order. */
    public List<CellMoment> cells() {
        return IntStream.range(0, model.cells.size()).mapToObj(this::cell).toList();
    }

    private CellMoment cell(int k) {
        int at = model.layout.cell(k, 0);
        CellModel cell = model.cells.get(k);
        return new CellMoment(
                cell.id(),
                x[at + StateLayout.CHARGE],
                cell.curve.voltsAt(x[at + StateLayout.CHARGE]),
                now.cellV[k],
                now.cellA[k],
                x[at + StateLayout.CELL_C],
                x[at + StateLayout.PEAK_C],
                x[at + StateLayout.PEAK_A],
                x[at + StateLayout.LEAST_V]);
    }

    /** All coils at this moment, in file order. */
    public List<CoilMoment> coils() {
        return IntStream.range(0, model.coils.size()).mapToObj(this::coil).toList();
    }

    private CoilMoment coil(int k) {
        String id = model.coils.get(k).part().id();
        double temperatureC = Double.NaN;
        double peakC = Double.NaN;
        for (int hot = 0; hot < model.hotCoils.size(); hot++) {
            if (model.hotCoils.get(hot).index() == k) {
                temperatureC = x[model.layout.coil(hot, StateLayout.HOT_C)];
                peakC = x[model.layout.coil(hot, StateLayout.HOT_PEAK_C)];
            }
        }
        return new CoilMoment(id, now.coilA[k] * now.coilOhm[k], now.coilA[k], temperatureC, peakC);
    }

    /** The account of energy so far. */
    public EnergyBook energy() {
        StateLayout layout = model.layout;
        return new EnergyBook(
                x[layout.givenJ],
                x[layout.deliveredJ],
                x[layout.cellHeatJ],
                x[layout.pathHeatJ],
                x[layout.chargingJ],
                x[layout.boardHeatJ],
                x[layout.supplyHeatJ]);
    }

    /** What {@link org.sagwise.reading.Bench#at} needs to take every reading of this moment. */
    public States states() {
        Map<String, CellState> cells = new HashMap<>();
        for (int k = 0; k < model.cells.size(); k++) {
            int at = model.layout.cell(k, 0);
            CellModel cell = model.cells.get(k);
            cells.put(
                    cell.id(),
                    new CellState(
                            x[at + StateLayout.CHARGE],
                            cell.curve.voltsAt(x[at + StateLayout.CHARGE]),
                            StateLayout.slowV(x, at),
                            x[at + StateLayout.CELL_C],
                            cell.ptcOhm(x[at + StateLayout.PTC_C]),
                            isTripped(cell.id()) ? CellState.Guard.TRIPPED : CellState.Guard.CLOSED));
        }
        Map<String, Double> coilC = new HashMap<>();
        for (int k = 0; k < model.hotCoils.size(); k++) {
            coilC.put(model.hotCoils.get(k).name(), x[model.layout.coil(k, StateLayout.HOT_C)]);
        }
        Map<Integer, Double> linkC = new HashMap<>();
        for (int k = 0; k < model.wires.size(); k++) {
            linkC.put(model.wires.get(k).index(), x[model.layout.wire(k, StateLayout.HOT_C)]);
        }
        Set<String> blown = new HashSet<>(model.bench.start().blownFuses());
        blown.addAll(marked(Kind.FUSE_BLOWN));
        return new States(cells, coilC, linkC, blown, broken());
    }

    private boolean isTripped(String cell) {
        return has(Kind.CID_OPENED, cell)
                || has(Kind.GUARD_CURRENT, cell)
                || has(Kind.GUARD_LOW, cell)
                || has(Kind.GUARD_HIGH, cell);
    }

    private Broken broken() {
        Set<String> stopped = marked(Kind.CHARGER_DONE);
        stopped.addAll(marked(Kind.BOARD_CUTOFF));
        stopped.addAll(marked(Kind.BOARD_INPUT_LIMIT));
        stopped.addAll(marked(Kind.BOARD_NO_POWER));
        stopped.addAll(marked(Kind.BOARD_SHORTED));
        Set<Integer> links = new HashSet<>();
        marks.stream()
                .mapToObj(detectors::get)
                .filter(detector -> detector.kind() == Kind.WIRE_MELTED)
                .forEach(detector -> links.add(model.wires.get(detector.place()).index()));
        return new Broken(marked(Kind.COIL_MELTED), links, stopped);
    }

    private Set<String> marked(Kind kind) {
        Set<String> parts = new HashSet<>();
        marks.stream()
                .mapToObj(detectors::get)
                .filter(detector -> detector.kind() == kind)
                .forEach(detector -> parts.add(detector.part()));
        return parts;
    }
}
