package org.sagwise.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.sagwise.network.ChargerState;
import org.sagwise.network.ConverterState;
import org.sagwise.network.Element;
import org.sagwise.network.Network;
import org.sagwise.network.NetworkSolver;
import org.sagwise.network.OperatingPoint;
import org.sagwise.network.PreparedNetwork;
import org.sagwise.network.SolvingEffort;
import org.sagwise.part.PartKind;
import org.sagwise.reading.Circuit;
import org.sagwise.reading.States;
import org.sagwise.scenario.Press;

/**
 * The bench as a network while nothing opens or closes: volts and ohms are filled in, currents come
 * out. It works in its own arrays and belongs to one stepper.
 */
final class Wiring {

    /** What an element does with power. */
    private enum Role {
        CELL,
        LOAD,
        PATH,
        SUPPLY,
        CHARGER,
        BOARD
    }

    private final RunModel model;
    private final Network network;
    private final Optional<PreparedNetwork> prepared;
    private final Role[] roles;
    private final int[] cellElement;
    private final int[] coilElement;
    private final int[] hotCoilElement;
    private final int[] wireElement;
    private final int[] fuseElement;
    private final int[] chargerElement;
    private final int[] boardElement;

    /** Volts of each source, V; filled in by whoever asks for a solution. */
    final double[] emfV;

    /** Ohms of each element, Ω. */
    final double[] ohm;

    private final double[] currentA;
    private OperatingPoint point;
    /**
     * What a step of a run costs besides solving, in additions and multiplications, roughly: states, events and the
     * account of energy. Of a small bench that is nearly all, and a run of very many short steps must end, too.
     */
    private static final double BESIDE = 1_500;

    /** The same for each element. */
    private static final double BESIDE_EACH = 150;

    private final double effortAnew;
    private double effort;

    Wiring(RunModel model, States states, Press press) {
        this.model = model;
        Circuit circuit = Circuit.of(model.bench, states, press);
        network = circuit.network();
        prepared = PreparedNetwork.of(network);
        effortAnew = SolvingEffort.of(network);
        int count = network.elements().size();
        emfV = new double[count];
        ohm = new double[count];
        currentA = new double[count];
        roles = new Role[count];
        for (int e = 0; e < count; e++) {
            fill(e, network.elements().get(e));
            roles[e] = role(circuit.owners().get(e));
        }
        cellElement = elements(circuit, model.cells.stream().map(CellModel::id).toList());
        coilElement =
                elements(circuit, model.coils.stream().map(c -> c.part().id()).toList());
        hotCoilElement =
                elements(circuit, model.hotCoils.stream().map(HotModel::name).toList());
        fuseElement = elements(circuit, model.fuses.stream().map(f -> f.id()).toList());
        chargerElement =
                elements(circuit, model.chargers.stream().map(c -> c.id()).toList());
        boardElement = elements(circuit, model.boards);
        wireElement = new int[model.wires.size()];
        for (int k = 0; k < wireElement.length; k++) {
            wireElement[k] = circuit.elementOfLink()[model.wires.get(k).index()];
        }
    }

    private void fill(int e, Element element) {
        if (element instanceof Element.Resistance r) {
            ohm[e] = r.ohm();
        } else if (element instanceof Element.Source s) {
            ohm[e] = s.seriesOhm();
            emfV[e] = s.emfV();
        } else if (element instanceof Element.OneWay d) {
            ohm[e] = d.ohm();
            emfV[e] = -d.dropV();
        }
    }

    private Role role(Circuit.Owner owner) {
        if (owner.link().isPresent()) {
            return Role.PATH;
        }
        PartKind kind = model.bench.part(owner.part()).kind();
        return switch (kind.role()) {
            case LOAD -> Role.LOAD;
            case IN_LINE, METER -> Role.PATH;
            case CONVERTER -> Role.BOARD;
            case SOURCE -> kind == PartKind.CELL ? Role.CELL : kind == PartKind.CHARGER ? Role.CHARGER : Role.SUPPLY;
        };
    }

    private static int[] elements(Circuit circuit, List<String> ids) {
        return ids.stream().mapToInt(id -> circuit.element(id).orElse(-1)).toArray();
    }

    /** Sets what a cell is at this moment; a cell whose guard is open is left alone. */
    void cell(int k, double volts, double ohms) {
        if (cellElement[k] >= 0) {
            emfV[cellElement[k]] = volts;
            ohm[cellElement[k]] = ohms;
        }
    }

    void hotCoil(int k, double ohms) {
        if (hotCoilElement[k] >= 0) {
            ohm[hotCoilElement[k]] = ohms;
        }
    }

    void wire(int k, double ohms) {
        if (wireElement[k] >= 0) {
            ohm[wireElement[k]] = ohms;
        }
    }

    /** Solves for what has been filled in; false if there is no answer. */
    boolean solve() {
        point = null;
        effort += BESIDE + BESIDE_EACH * currentA.length;
        if (prepared.isPresent()) {
            effort += prepared.get().effort();
            if (prepared.get().solve(emfV, ohm, currentA)) {
                return true;
            }
        }
        effort += effortAnew;
        List<Element> elements = new ArrayList<>(currentA.length);
        for (int e = 0; e < currentA.length; e++) {
            elements.add(element(e));
        }
        point = NetworkSolver.solve(new Network(network.nodeCount(), elements, network.referencePreference()));
        boolean answered = true;
        for (int e = 0; e < currentA.length; e++) {
            double ampere = point.currentA(e);
            boolean joint = elements.get(e) instanceof Element.Resistance r && r.ohm() == 0;
            answered &= joint || !Double.isNaN(ampere);
            currentA[e] = Double.isNaN(ampere) ? 0 : ampere;
        }
        return answered;
    }

    /** Additions and multiplications spent on solving since the beginning, roughly. */
    double effort() {
        return effort;
    }

    private Element element(int e) {
        Element old = network.elements().get(e);
        if (old instanceof Element.Resistance r) {
            return new Element.Resistance(r.a(), r.b(), ohm[e]);
        }
        return old instanceof Element.Source s ? new Element.Source(s.plus(), s.minus(), emfV[e], ohm[e]) : old;
    }

    /** Largest current through anything, A. */
    double largestA() {
        double largest = 0;
        for (double ampere : currentA) {
            largest = Math.max(largest, Math.abs(ampere));
        }
        return largest;
    }

    double cellA(int k) {
        return at(cellElement[k]);
    }

    double coilA(int k) {
        return at(coilElement[k]);
    }

    double coilOhm(int k) {
        return coilElement[k] < 0 ? 0 : ohm[coilElement[k]];
    }

    double fuseA(int k) {
        return at(fuseElement[k]);
    }

    double chargerA(int k) {
        return at(chargerElement[k]);
    }

    private double at(int element) {
        return element < 0 ? 0 : currentA[element];
    }

    double hotCoilA(int k) {
        return at(hotCoilElement[k]);
    }

    double wireA(int k) {
        return at(wireElement[k]);
    }

    Optional<ChargerState> chargerState(int k) {
        return chargerElement[k] < 0 || point == null ? Optional.empty() : point.chargerState(chargerElement[k]);
    }

    Optional<ConverterState> boardState(int k) {
        return boardElement[k] < 0 || point == null ? Optional.empty() : point.converterState(boardElement[k]);
    }

    /** Books the energy of everything but the cells over a step. */
    void book(double[] x, double seconds) {
        StateLayout layout = model.layout;
        for (int e = 0; e < currentA.length; e++) {
            double ampere = currentA[e];
            double heatJ = ampere * ampere * ohm[e] * seconds;
            switch (roles[e]) {
                case LOAD -> x[layout.deliveredJ] += heatJ;
                case PATH -> x[layout.pathHeatJ] += heatJ - emfV[e] * ampere * seconds;
                case SUPPLY -> {
                    give(x, emfV[e] * ampere * seconds);
                    x[layout.supplyHeatJ] += heatJ;
                }
                case CHARGER -> give(x, volts(e) * ampere * seconds);
                case BOARD -> x[layout.boardHeatJ] += boardHeatW(e) * seconds;
                case CELL -> {}
            }
        }
    }

    /** Books what a source gives, or takes where negative. */
    void give(double[] x, double joule) {
        StateLayout layout = model.layout;
        x[joule > 0 ? layout.givenJ : layout.chargingJ] += Math.abs(joule);
    }

    private double volts(int e) {
        Element.LimitedSource charger =
                (Element.LimitedSource) network.elements().get(e);
        double volts = point.voltageV(charger.plus(), charger.minus());
        return Double.isNaN(volts) ? 0 : volts;
    }

    private double boardHeatW(int e) {
        if (currentA[e] == 0) {
            return 0;
        }
        Element.Converter board = (Element.Converter) network.elements().get(e);
        double inW = currentA[e] * point.voltageV(board.inPlus(), board.inMinus());
        double outA = point.outputCurrentA(e);
        double outW = outA == 0 ? 0 : outA * point.voltageV(board.outPlus(), board.outMinus());
        return inW - outW;
    }
}
