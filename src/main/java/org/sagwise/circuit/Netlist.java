package org.sagwise.circuit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.scenario.net.Groups;
import org.sagwise.scenario.net.Nets;

/**
 * The circuit at one position of the button, seen as pieces of metal with parts between them.
 *
 * <p>Links, closed switches, whole fuses, conducting reverse guards, meters set to amps and resistors up to {@link
 * #CONDUCTOR_OHM} are metal, whatever exactly their resistance is: how much current they carry is a
 * matter for the readings. What is left between the nets are sources (cells and supplies), loads
 * (coils, boards, chargers, other resistors) and gaps (open switches, melted fuses, blocking guards, voltmeters).
 */
public final class Netlist {

    /**
     * Up to here a resistor stands for a wire or a contact and not for a load, Ω: the resistance
     * below which standard tests call it an external short circuit (UN Manual of Tests and
     * Criteria, 38.3 test T.5: less than 0.1 Ω, as quoted by test houses).
     */
    public static final double CONDUCTOR_OHM = 0.1;

    private static final int MINUS = PartKind.CELL.terminals().indexOf("-");
    private static final int CAN = PartKind.CELL.terminals().indexOf("can");
    private static final int IN_MINUS = PartKind.BOARD.terminals().indexOf("in-");
    private static final int OUT_PLUS = PartKind.BOARD.terminals().indexOf("out+");
    private static final int OUT_MINUS = PartKind.BOARD.terminals().indexOf("out-");

    private final Nets nets;
    private final Map<String, Branch> branches = new HashMap<>();
    private final List<Branch> sources = new ArrayList<>();
    private final List<Branch> loads = new ArrayList<>();
    private final List<Branch> gaps = new ArrayList<>();
    private final List<Branch> outputs = new ArrayList<>();
    private final boolean[] loaded;

    private Netlist(Scenario scenario, Nets byLinks, Predicate<Part> conducts) {
        nets = byLinks.with(groups -> joinInside(scenario.parts(), groups, conducts));
        int first = 0;
        for (Part part : scenario.parts()) {
            sort(part, first, conducts);
            first += part.kind().terminals().size();
        }
        loaded = new boolean[nets.size()];
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
     * @param byLinks the nets that those links of the scenario make which join their ends
     * @param conducts whether current passes what lies in its way, or a meter, as through metal
     */
    public static Netlist of(Scenario scenario, Nets byLinks, Predicate<Part> conducts) {
        return new Netlist(scenario, byLinks, conducts);
    }

    /** A cell's can is its minus, a board's two minus terminals are one (common practice). */
    private static void joinInside(List<Part> parts, Groups groups, Predicate<Part> conducts) {
        int first = 0;
        for (Part part : parts) {
            switch (part.kind()) {
                case CELL -> groups.join(first + MINUS, first + CAN);
                case BOARD -> groups.join(first + IN_MINUS, first + OUT_MINUS);
                default -> {
                    if (isMetal(part, conducts)) {
                        groups.join(first, first + 1);
                    }
                }
            }
            first += part.kind().terminals().size();
        }
    }

    private static boolean isMetal(Part part, Predicate<Part> conducts) {
        return switch (part.kind().role()) {
            case IN_LINE, METER -> conducts.test(part);
            case LOAD -> part.kind() == PartKind.RESISTOR && part.numberOrDefault("ohm") <= CONDUCTOR_OHM;
            case SOURCE, CONVERTER -> false;
        };
    }

    private void sort(Part part, int first, Predicate<Part> conducts) {
        if (isMetal(part, conducts)) {
            return;
        }
        switch (part.kind().role()) {
            case SOURCE -> {
                if (part.kind() == PartKind.CHARGER) {
                    put(loads, part, first, first + 1);
                } else {
                    put(sources, part, first + MINUS, first);
                }
            }
            case LOAD -> put(loads, part, first, first + 1);
            case CONVERTER -> {
                outputs.add(new Branch(part.id(), nets.of(first + OUT_MINUS), nets.of(first + OUT_PLUS)));
                put(loads, part, first, first + IN_MINUS);
            }
            case IN_LINE, METER -> put(gaps, part, first, first + 1);
        }
    }

    private void put(List<Branch> list, Part part, int from, int to) {
        Branch branch = new Branch(part.id(), nets.of(from), nets.of(to));
        list.add(branch);
        branches.put(part.id(), branch);
    }

    /** Sources that metal joins, pack by pack. */
    public List<Pack> packs() {
        return Packs.of(this);
    }

    /** Number of nets. */
    public int size() {
        return nets.size();
    }

    /** The net of a terminal of this circuit. */
    public int net(TerminalRef terminal) {
        return nets.of(terminal);
    }

    /** The terminals of a net in file order. */
    public List<TerminalRef> terminals(int net) {
        return nets.members(net);
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

    /** What keeps two nets apart: open switches, melted fuses, blocking reverse guards, meters set to volts or ohms. */
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
