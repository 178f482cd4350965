package org.sagwise.reading;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.sagwise.network.Element;
import org.sagwise.network.Network;
import org.sagwise.part.BoardSpec;
import org.sagwise.part.ChargerSpec;
import org.sagwise.part.FuseSpec;
import org.sagwise.part.PartKind;
import org.sagwise.part.PtcSpec;
import org.sagwise.part.ReverseGuardSpec;
import org.sagwise.part.key.EffectiveKeys;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.TerminalRef;

/** Turns a bench at one moment into an electrical network. */
final class CircuitCompiler {

    private final Bench bench;
    private final States states;
    private final Press press;
    private final Map<TerminalRef, Integer> nodeOf = new LinkedHashMap<>();
    private final List<Element> elements = new ArrayList<>();
    private final List<Circuit.Owner> owners = new ArrayList<>();
    private final Map<String, Integer> elementOf = new HashMap<>();
    private int nodeCount;

    private CircuitCompiler(Bench bench, States states, Press press) {
        this.bench = bench;
        this.states = states;
        this.press = press;
    }

    static Circuit compile(Bench bench, States states, Press press) {
        return new CircuitCompiler(bench, states, press).compile();
    }

    private Circuit compile() {
        for (Part part : bench.scenario().parts()) {
            number(part);
        }
        for (Part part : bench.scenario().parts()) {
            add(part);
        }
        int[] elementOfLink = new int[bench.scenario().links().size()];
        Arrays.fill(elementOfLink, -1);
        for (int i = 0; i < elementOfLink.length; i++) {
            Link link = bench.scenario().links().get(i);
            if (bench.joins(link) && !states.broken().links().contains(i)) {
                elementOfLink[i] = elements.size();
                owners.add(Circuit.Owner.of(i));
                elements.add(new Element.Resistance(
                        nodeOf.get(link.from()), nodeOf.get(link.to()), bench.ohmOf(link, i, states)));
            }
        }
        Network network = new Network(nodeCount, elements, references());
        return new Circuit(network, nodeOf, elementOf, elementOfLink, owners);
    }

    /** A cell's can is its minus; a board's two minus terminals are one (common practice). */
    private void number(Part part) {
        for (TerminalRef terminal : part.terminals()) {
            String twin = switch (terminal.terminal()) {
                case "can" -> "-";
                case "out-" -> "in-";
                default -> "";
            };
            nodeOf.put(terminal, twin.isEmpty() ? nodeCount++ : nodeOf.get(part.terminal(twin)));
        }
    }

    private int node(Part part, String terminal) {
        return nodeOf.get(part.terminal(terminal));
    }

    private void add(Part part) {
        switch (part.kind()) {
            case CELL -> cell(part);
            case COIL -> {
                if (!states.broken().coils().contains(part.id())) {
                    resistance(part, bench.coils().get(part.id()).ohmAt(coilC(part)));
                }
            }
            case SWITCH -> {
                if (bench.isClosed(part, press)) {
                    resistance(part, values(part).milli("closed_mohm"));
                }
            }
            case FUSE -> {
                if (!states.blownFuses().contains(part.id())) {
                    resistance(part, bench.spec(part.id(), FuseSpec.class).ohm());
                }
            }
            case PTC -> resistance(part, bench.spec(part.id(), PtcSpec.class).ohmAt(warmC(part)));
            case REVERSE_GUARD -> {
                ReverseGuardSpec guard = bench.spec(part.id(), ReverseGuardSpec.class);
                put(part, new Element.OneWay(node(part, "in"), node(part, "out"), guard.dropV(), guard.ohm()));
            }
            case RESISTOR -> resistance(part, values(part).need("ohm"));
            case METER -> resistance(part, MeterInput.ohmOf(values(part)));
            case SUPPLY ->
                put(
                        part,
                        new Element.Source(
                                node(part, "+"),
                                node(part, "-"),
                                values(part).need("volts"),
                                Element.countedOhm(values(part).need("internal_ohm"))));
            case CHARGER, BOARD -> {
                if (!states.broken().stopped().contains(part.id())) {
                    device(part);
                }
            }
        }
    }

    private EffectiveKeys values(Part part) {
        return bench.values(part.id());
    }

    /** A resettable fuse at the temperature that time gave it, at first that of the air. */
    private double warmC(Part part) {
        return states.coilC().getOrDefault(part.id(), bench.scenario().ambientC());
    }

    private double coilC(Part part) {
        return states.coilC().getOrDefault(part.id(), ResolvedCoil.REFERENCE_C);
    }

    private void cell(Part part) {
        CellState state = states.cells().get(part.id());
        if (state.guard() == CellState.Guard.CLOSED) {
            put(
                    part,
                    new Element.Source(
                            node(part, "+"),
                            node(part, "-"),
                            state.restV() - state.polarisationV(),
                            bench.cells().get(part.id()).ohmAt(state)));
        }
    }

    private void device(Part part) {
        if (part.kind() == PartKind.CHARGER) {
            charger(part);
        } else {
            board(part);
        }
    }

    private void charger(Part part) {
        ChargerSpec charger = bench.spec(part.id(), ChargerSpec.class);
        put(part, new Element.LimitedSource(node(part, "+"), node(part, "-"), charger.currentA(), charger.limitV()));
    }

    private void board(Part part) {
        BoardSpec board = bench.spec(part.id(), BoardSpec.class);
        put(
                part,
                new Element.Converter(
                        node(part, "in+"),
                        node(part, "in-"),
                        node(part, "out+"),
                        node(part, "out-"),
                        board.powerW(),
                        board.efficiency(),
                        board.cutoffV(),
                        board.maxInputA(),
                        board.outMinV(),
                        board.outMaxV()));
    }

    private void resistance(Part part, double ohm) {
        List<String> ends = part.kind().terminals();
        put(part, new Element.Resistance(node(part, ends.get(0)), node(part, ends.get(1)), ohm));
    }

    private void put(Part part, Element element) {
        elementOf.put(part.id(), elements.size());
        owners.add(Circuit.Owner.of(part.id()));
        elements.add(element);
    }

    /** The minus of the first cell, else of the first supply, else of whatever else gives. */
    private List<Integer> references() {
        List<Integer> preference = new ArrayList<>();
        for (PartKind kind : List.of(PartKind.CELL, PartKind.SUPPLY, PartKind.CHARGER)) {
            bench.scenario().partsOf(kind).forEach(part -> preference.add(node(part, "-")));
        }
        bench.scenario().partsOf(PartKind.BOARD).forEach(b -> preference.add(node(b, "in-")));
        return preference;
    }
}
