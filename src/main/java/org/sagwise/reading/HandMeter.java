package org.sagwise.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.sagwise.network.Element;
import org.sagwise.network.Network;
import org.sagwise.network.NetworkSolver;
import org.sagwise.network.OperatingPoint;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Probes;

/**
 * The meter in the hand. It never changes the bench: it is asked what it would show if it were put
 * there, and the network is solved once more with it in place. A meter that is to stay in the
 * circuit is a part.
 */
final class HandMeter {

    private final Bench bench;
    private final States states;
    private final Circuit circuit;
    private final int red;
    private final int black;
    private final UnaryOperator<Circuit> prepared;

    private HandMeter(Bench bench, States states, Circuit circuit, Probes probes, UnaryOperator<Circuit> prepared) {
        this.bench = bench;
        this.states = states;
        this.circuit = prepared.apply(circuit);
        this.red = circuit.node(probes.red());
        this.black = circuit.node(probes.black());
        this.prepared = prepared;
    }

    /**
     * What the meter shows.
     *
     * @param point the bench without the meter
     */
    static ProbeReading read(Bench bench, States states, Circuit circuit, OperatingPoint point, Probes probes) {
        HandMeter meter = new HandMeter(bench, states, circuit, probes, UnaryOperator.identity());
        double voltsV = meter.voltsV(point);
        MeterDisplay display = switch (probes.mode()) {
            case VOLTS -> new MeterDisplay.Volts(voltsV);
            case AMPS -> new Ammeter(meter).read();
            case OHMS -> new Ohmmeter(meter).read();
        };
        return new ProbeReading(probes.red(), probes.black(), probes.mode(), voltsV, display);
    }

    /** What a meter among the parts shows on ohms: the same as if it were in the hand. */
    static MeterDisplay ohms(Bench bench, States states, Circuit circuit, Part panel) {
        Probes probes = Probes.of(panel.terminal("red"), panel.terminal("black"));
        return new Ohmmeter(new HandMeter(bench, states, circuit, probes, it -> without(it, panel.id()))).read();
    }

    private static Circuit without(Circuit circuit, String part) {
        int element = circuit.element(part).orElseThrow();
        List<Integer> ends = circuit.network().elements().get(element).nodes();
        List<Element> elements = new ArrayList<>(circuit.network().elements());
        // Element numbers stay what they are: a source of no current joins nothing.
        elements.set(element, new Element.CurrentSource(ends.get(0), ends.get(1), 0));
        return new Circuit(
                new Network(
                        circuit.network().nodeCount(),
                        elements,
                        circuit.network().referencePreference()),
                circuit.nodeOf(),
                circuit.elementOf(),
                circuit.elementOfLink(),
                circuit.owners());
    }

    private double voltsV(OperatingPoint point) {
        if (Double.isNaN(point.voltageV(red, black))) {
            return Double.NaN;
        }
        return red == black
                ? 0
                : NetworkSolver.solve(with(circuit, new Element.Resistance(red, black, MeterInput.VOLTMETER_OHM)))
                        .voltageV(red, black);
    }

    /** The network with one more element, which comes last. */
    static Network with(Circuit circuit, Element more) {
        List<Element> elements = new ArrayList<>(circuit.network().elements());
        elements.add(more);
        return new Network(
                circuit.network().nodeCount(), elements, circuit.network().referencePreference());
    }

    int red() {
        return red;
    }

    int black() {
        return black;
    }

    Bench bench() {
        return bench;
    }

    /** The bench as it is now. */
    Circuit now() {
        return circuit;
    }

    /** The bench with the button in both positions: a meter stays where it is put. */
    List<Circuit> positions() {
        return Stream.of(Press.RELEASED, Press.HELD)
                .map(press -> prepared.apply(Circuit.of(bench, states, press)))
                .toList();
    }

    /** Current of a part, A; 0 of one that lets nothing through. */
    static double currentA(Circuit circuit, OperatingPoint point, String part) {
        OptionalInt element = circuit.element(part);
        return element.isPresent() ? point.currentA(element.getAsInt()) : 0;
    }
}
