package org.sagwise.network;

import java.util.List;
import java.util.Optional;

/**
 * The solution of a {@link Network}: potentials of its nodes and currents of its elements.
 * Immutable.
 */
public final class OperatingPoint {
    private final Network network;
    private final double[] potentialV;
    private final int[] island;
    private final double[] currentA;
    private final Stance stance;
    private final Residual residual;
    private final List<Finding> findings;

    OperatingPoint(Network network, LinearCircuit circuit, Flow flow, Stance stance, List<Finding> findings) {
        this.network = network;
        this.stance = stance;
        this.findings = List.copyOf(findings);
        potentialV = flow.potentialV();
        island = new int[network.nodeCount()];
        for (int node = 0; node < island.length; node++) {
            island[node] = circuit.island(node);
        }
        currentA = new double[flow.currentA().length];
        for (int b = 0; b < currentA.length; b++) {
            currentA[b] = circuit.tells(flow, b) ? flow.currentA()[b] : Double.NaN;
        }
        residual = Residuals.of(circuit, flow);
    }

    /** The network this solves. */
    public Network network() {
        return network;
    }

    /**
     * Potential of a node against the reference of its island (V); NaN where no source reaches it
     * or its island has no answer.
     */
    public double potentialV(int node) {
        return potentialV[node];
    }

    /** Whether the potential of a node is known. */
    public boolean isKnown(int node) {
        return !Double.isNaN(potentialV[node]);
    }

    /**
     * Voltage between two nodes (V), positive if {@code plus} is the higher; NaN where unknown or
     * where they lie in different islands.
     */
    public double voltageV(int plus, int minus) {
        return island[plus] == island[minus] ? potentialV[plus] - potentialV[minus] : Double.NaN;
    }

    /**
     * Voltage across an element (V): of its first node ({@code a}, {@code plus}, {@code inPlus})
     * over its second. Across resistances and sources it follows from the current, and so keeps its
     * digits where a difference of potentials would lose them (1 A through 1e-7 Ω at 4.2 V). NaN
     * where unknown.
     */
    public double voltageAcrossV(int element) {
        Element e = network.elements().get(element);
        int first = e.nodes().get(0);
        int second = e.nodes().get(1);
        if (e instanceof Element.Resistance r && r.ohm() > 0) {
            return r.ohm() * currentA[element];
        }
        if (e instanceof Element.OneWay d && isKnown(first) && !blocks(element)) {
            return d.dropV() + d.ohm() * currentA[element];
        }
        return e instanceof Element.Source s && isKnown(first)
                ? s.emfV() - s.seriesOhm() * currentA[element]
                : voltageV(first, second);
    }

    /**
     * Number of the island a node lies in. Islands are numbered from 0 by their lowest node; a
     * charger that is off, a stopped converter, a one-way element that blocks and a current source
     * join nothing.
     */
    public int island(int node) {
        return island[node];
    }

    /**
     * Current of an element (A): of a resistance from {@code a} to {@code b}, of a
     * one-way element from {@code from} to {@code to}; of a source or
     * charger out of its plus end, so positive when it delivers; of a converter into its input. NaN
     * in an island without an answer, and for an ideal joint in a loop of ideal joints.
     */
    public double currentA(int element) {
        return currentA[element];
    }

    /**
     * Current out of the output of a converter (A).
     *
     * @throws IllegalArgumentException if the element is no converter
     */
    public double outputCurrentA(int element) {
        if (stance.converter(element) == null) {
            throw new IllegalArgumentException("element " + element + " is no converter");
        }
        return currentA[stance.converter(element).outputBranch()];
    }

    /** What a charger is doing; empty if the element is none. */
    public Optional<ChargerState> chargerState(int element) {
        return Optional.ofNullable(stance.charger(element)).map(Stance.Charger::state);
    }

    /** What a converter is doing; empty if the element is none. */
    public Optional<ConverterState> converterState(int element) {
        return Optional.ofNullable(stance.converter(element)).map(Stance.Converter::state);
    }

    /** Whether an element is a one-way element that lets nothing through. */
    public boolean blocks(int element) {
        return stance.way(element) == Stance.Way.BLOCKS;
    }

    /** How well the solution obeys Kirchhoff's laws. */
    public Residual residual() {
        return residual;
    }

    /** What stands in the way of an answer; empty if all of the network is solved. */
    public List<Finding> findings() {
        return findings;
    }
}
