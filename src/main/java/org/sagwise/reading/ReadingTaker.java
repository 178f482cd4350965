package org.sagwise.reading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.sagwise.network.Finding;
import org.sagwise.network.OperatingPoint;
import org.sagwise.part.MeterMode;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/** Reads the meters: turns an operating point into readings. */
final class ReadingTaker {

    private final Bench bench;
    private final States states;
    private final Press press;
    private final Circuit circuit;
    private final OperatingPoint point;

    ReadingTaker(Bench bench, States states, Press press, Circuit circuit, OperatingPoint point) {
        this.bench = bench;
        this.states = states;
        this.press = press;
        this.circuit = circuit;
        this.point = point;
    }

    Readings take() {
        Scenario scenario = bench.scenario();
        List<CellReading> cells =
                bench.cells().values().stream().map(this::cell).toList();
        List<PartReading> parts = scenario.parts().stream()
                .filter(part -> part.kind() != PartKind.CELL)
                .map(this::part)
                .toList();
        List<CoilReading> coils = parts.stream()
                .filter(part -> part.kind() == PartKind.COIL)
                .map(this::coil)
                .toList();
        List<LinkReading> links = new ArrayList<>();
        for (int i = 0; i < scenario.links().size(); i++) {
            links.add(link(scenario.links().get(i), i));
        }
        PackReading pack = new PackBook(bench, cells, parts, links, this::boardOutputW, this::firstV).write();
        Map<TerminalRef, Double> nodes = new LinkedHashMap<>();
        Map<TerminalRef, Integer> islands = new LinkedHashMap<>();
        circuit.nodeOf().forEach((terminal, node) -> {
            nodes.put(terminal, point.potentialV(node));
            islands.put(terminal, point.island(node));
        });
        return new Readings(
                scenario.title(),
                press.isHeld(),
                cells,
                coils,
                parts,
                links,
                pack,
                probes(),
                ohmmeters(),
                nodes,
                islands,
                new Balance(point.residual().kclWorstA(), point.residual().powerErrorW()),
                notices());
    }

    private CellReading cell(ResolvedCell cell) {
        CellState state = states.cells().get(cell.id());
        OptionalInt element = circuit.element(cell.id());
        double currentA = element.isPresent() ? point.currentA(element.getAsInt()) : 0;
        double terminalV = volts(cell.part());
        double sagV = state.restV() - terminalV;
        return new CellReading(
                cell.id(),
                state.restV(),
                terminalV,
                sagV,
                currentA,
                cell.spec().limitA(),
                cell.ohmAt(state),
                element.isPresent() ? currentA * sagV : 0);
    }

    /** Voltage from the first to the second terminal of a part; 0 if neither end is held. */
    private double volts(Part part) {
        List<TerminalRef> ends = part.terminals();
        int first = circuit.node(ends.get(0));
        int second = circuit.node(ends.get(1));
        boolean hanging = !point.isKnown(first) && !point.isKnown(second);
        return hanging && point.findings().isEmpty() ? 0 : point.voltageV(first, second);
    }

    private PartReading part(Part part) {
        OptionalInt element = circuit.element(part.id());
        double voltsV = volts(part);
        double currentA = element.isPresent() ? point.currentA(element.getAsInt()) : 0;
        return new PartReading(
                part.id(),
                part.kind(),
                currentA,
                voltsV,
                currentA == 0 || voltsV == 0 ? 0 : currentA * voltsV,
                state(part, element));
    }

    private PartReading.State state(Part part, OptionalInt element) {
        if (element.isEmpty()) {
            return withoutElement(part.kind());
        }
        int index = element.getAsInt();
        return point.chargerState(index)
                .map(ElementStates::of)
                .or(() -> point.converterState(index).map(ElementStates::of))
                .orElse(point.blocks(index) ? PartReading.State.BLOCKING : PartReading.State.WORKING);
    }

    private static PartReading.State withoutElement(PartKind kind) {
        return switch (kind.role()) {
            case LOAD -> PartReading.State.BLOWN;
            case CONVERTER -> PartReading.State.IDLE;
            case SOURCE -> kind == PartKind.CHARGER ? PartReading.State.IDLE : PartReading.State.OPEN;
            case IN_LINE, METER -> kind.has("blown") ? PartReading.State.BLOWN : PartReading.State.OPEN;
        };
    }

    private CoilReading coil(PartReading coil) {
        double temperatureC = states.coilC().getOrDefault(coil.id(), ResolvedCoil.REFERENCE_C);
        ResolvedCoil resolved = bench.coils().get(coil.id());
        return new CoilReading(
                coil.id(),
                resolved.ohmAt(temperatureC),
                coil.voltsV(),
                coil.currentA(),
                coil.powerW(),
                resolved.winding().isPresent() ? temperatureC : Double.NaN);
    }

    private LinkReading link(Link link, int index) {
        int element = circuit.elementOfLink()[index];
        double ohm = bench.ohmOf(link, index, states);
        double currentA = element < 0 ? 0 : point.currentA(element);
        double dropV = point.voltageV(circuit.node(link.from()), circuit.node(link.to()));
        double heatW = ohm == 0 || element < 0 ? 0 : currentA * currentA * ohm;
        return new LinkReading(
                index, link.from(), link.to(), ohm, currentA, ohm == 0 && !Double.isNaN(dropV) ? 0 : dropV, heatW);
    }

    private double boardOutputW(String id) {
        OptionalInt element = circuit.element(id);
        if (element.isEmpty()) {
            return 0;
        }
        double currentA = point.outputCurrentA(element.getAsInt());
        Part part = bench.part(id);
        double voltsV = point.voltageV(circuit.node(part.terminal("out+")), circuit.node(part.terminal("out-")));
        return currentA == 0 ? 0 : currentA * voltsV;
    }

    private double firstV(String id) {
        Part part = bench.part(id);
        return point.potentialV(circuit.node(part.terminals().get(0)));
    }

    private Optional<ProbeReading> probes() {
        return bench.scenario().probes().map(probes -> HandMeter.read(bench, states, circuit, point, probes));
    }

    private Map<String, MeterDisplay> ohmmeters() {
        Map<String, MeterDisplay> displays = new LinkedHashMap<>();
        bench.scenario().partsOf(PartKind.METER).stream()
                .filter(meter -> meter.isTurnedTo(MeterMode.OHMS))
                .forEach(meter -> displays.put(meter.id(), HandMeter.ohms(bench, states, circuit, meter)));
        return displays;
    }

    private List<Notice> notices() {
        return point.findings().stream().map(this::notice).toList();
    }

    private Notice notice(Finding finding) {
        List<String> parts = finding.elements().stream()
                .map(element -> circuit.owners().get(element).part())
                .filter(part -> !part.isEmpty())
                .distinct()
                .toList();
        return new Notice(ElementStates.of(finding), parts);
    }
}
