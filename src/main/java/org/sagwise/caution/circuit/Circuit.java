package org.sagwise.caution.circuit;

import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The circuit at one position of the button, seen as pieces of metal with parts between them.
 *
 * <p>Links, closed switches, whole fuses, meters set to amps and resistors up to {@link
 * #CONDUCTOR_OHM} are metal, whatever exactly their resistance is: how much current they carry is a
 * matter for the readings. What is left between the nets are sources (cells and supplies), loads
 * (coils, boards, chargers, other resistors) and gaps (open switches, melted fuses, voltmeters).
 */
public final class Circuit {

    /**
     * Up to here a resistor stands for a wire or a contact and not for a load, Ω: the resistance
     * below which standard tests call it an external short circuit (UN Manual of Tests and
     * Criteria, 38.3 test T.5: less than 0.1 Ω, as quoted by test houses).
     */
    public static final double CONDUCTOR_OHM = 0.1;

    private final Map<TerminalRef, Integer> nets;
    private final List<List<TerminalRef>> terminals;
    private final Map<String, Branch> branches = new HashMap<>();
    private final List<Branch> sources = new ArrayList<>();
    private final List<Branch> loads = new ArrayList<>();
    private final List<Branch> gaps = new ArrayList<>();
    private final List<Branch> outputs = new ArrayList<>();
    private final boolean[] loaded;

    private Circuit(Scenario scenario, Predicate<Part> conducts, Predicate<Link> joins) {
        nets = numbered(scenario, conducts, joins);
        terminals = new ArrayList<>();
        for (Part part : scenario.parts()) {
            part.terminals().forEach(this::file);
        }
        for (Part part : scenario.parts()) {
            sort(part, conducts);
        }
        loaded = new boolean[terminals.size()];
        for (Branch load : loads) {
            loaded[load.from()] = true;
            loaded[load.to()] = true;
        }
        for (Branch output : outputs) {
            loaded[output.to()] = true;
        }
    }

    /**
     * Reads the shape of a circuit.
     *
     * @param conducts whether current passes a switch, a fuse or a meter as through metal
     * @param joins whether a link joins its ends
     */
    public static Circuit of(Scenario scenario, Predicate<Part> conducts, Predicate<Link> joins) {
        return new Circuit(scenario, conducts, joins);
    }

    private static Map<TerminalRef, Integer> numbered(
            Scenario scenario, Predicate<Part> conducts, Predicate<Link> joins) {
        Nets nets = new Nets();
        for (Part part : scenario.parts()) {
            part.terminals().forEach(nets::add);
        }
        for (Part part : scenario.parts()) {
            switch (part.kind()) {
                case CELL -> nets.join(part.terminal("-"), part.terminal("can"));
                case BOARD -> nets.join(part.terminal("in-"), part.terminal("out-"));
                default -> {
                    if (isMetal(part, conducts)) {
                        nets.join(part.terminals().get(0), part.terminals().get(1));
                    }
                }
            }
        }
        scenario.links().stream().filter(joins).forEach(l -> nets.join(l.from(), l.to()));
        return nets.numbered();
    }

    private static boolean isMetal(Part part, Predicate<Part> conducts) {
        return switch (part.kind()) {
            case SWITCH, FUSE, METER -> conducts.test(part);
            case RESISTOR -> part.numberOrDefault("ohm") <= CONDUCTOR_OHM;
            default -> false;
        };
    }

    private void file(TerminalRef terminal) {
        int net = nets.get(terminal);
        while (terminals.size() <= net) {
            terminals.add(new ArrayList<>());
        }
        terminals.get(net).add(terminal);
    }

    private void sort(Part part, Predicate<Part> conducts) {
        switch (part.kind()) {
            case CELL, SUPPLY -> put(sources, part, "-", "+");
            case COIL -> put(loads, part, "1", "2");
            case CHARGER -> put(loads, part, "+", "-");
            case BOARD -> {
                outputs.add(
                        new Branch(
                                part.id(), net(part.terminal("out-")), net(part.terminal("out+"))));
                put(loads, part, "in+", "in-");
            }
            case RESISTOR -> {
                if (!isMetal(part, conducts)) {
                    put(loads, part, "1", "2");
                }
            }
            case SWITCH, FUSE, METER -> {
                if (!isMetal(part, conducts)) {
                    List<String> ends = part.kind().terminals();
                    put(gaps, part, ends.get(0), ends.get(1));
                }
            }
        }
    }

    private void put(List<Branch> list, Part part, String from, String to) {
        Branch branch = new Branch(part.id(), net(part.terminal(from)), net(part.terminal(to)));
        list.add(branch);
        branches.put(part.id(), branch);
    }

    /** Sources that metal joins, pack by pack. */
    public List<Pack> packs() {
        return Packs.of(this);
    }

    /** Number of nets. */
    public int size() {
        return terminals.size();
    }

    /** The net of a terminal of this circuit. */
    public int net(TerminalRef terminal) {
        return nets.get(terminal);
    }

    /** The terminals of a net in file order. */
    public List<TerminalRef> terminals(int net) {
        return Collections.unmodifiableList(terminals.get(net));
    }

    /** Cells and supplies in file order. */
    public List<Branch> sources() {
        return Collections.unmodifiableList(sources);
    }

    /** The outputs of boards, from {@code out-} to {@code out+}, in file order. */
    public List<Branch> outputs() {
        return Collections.unmodifiableList(outputs);
    }

    /** Coils, boards (their input), chargers and resistors in file order. */
    public List<Branch> loads() {
        return Collections.unmodifiableList(loads);
    }

    /** What keeps two nets apart: open switches, melted fuses, meters set to volts or ohms. */
    public List<Branch> gaps() {
        return Collections.unmodifiableList(gaps);
    }

    /** The branch that a part is; empty for what counts as metal. */
    public Optional<Branch> branch(String part) {
        return Optional.ofNullable(branches.get(part));
    }

    /** Whether a load or the output of a board is joined to a net. */
    public boolean isLoaded(int net) {
        return loaded[net];
    }
}
