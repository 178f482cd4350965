package org.sagwise.caution.circuit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.TerminalRef;

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

    private static final int MINUS = PartKind.CELL.terminals().indexOf("-");
    private static final int CAN = PartKind.CELL.terminals().indexOf("can");
    private static final int IN_MINUS = PartKind.BOARD.terminals().indexOf("in-");
    private static final int OUT_PLUS = PartKind.BOARD.terminals().indexOf("out+");
    private static final int OUT_MINUS = PartKind.BOARD.terminals().indexOf("out-");

    private final Wiring wiring;
    private final int[] netOf;
    private final int size;
    private final Map<String, Branch> branches = new HashMap<>();
    private final List<Branch> sources = new ArrayList<>();
    private final List<Branch> loads = new ArrayList<>();
    private final List<Branch> gaps = new ArrayList<>();
    private final List<Branch> outputs = new ArrayList<>();
    private final boolean[] loaded;

    /** By net; gathered when first asked for, since most circuits are never asked. */
    private final List<List<TerminalRef>> terminals = new ArrayList<>();

    private Circuit(Wiring wiring, Predicate<Part> conducts) {
        this.wiring = wiring;
        netOf = nets(wiring, conducts);
        size = Arrays.stream(netOf).max().orElse(-1) + 1;
        for (int i = 0; i < wiring.parts().size(); i++) {
            sort(wiring.parts().get(i), wiring.firstOf(i), conducts);
        }
        loaded = new boolean[size];
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
     */
    public static Circuit of(Wiring wiring, Predicate<Part> conducts) {
        return new Circuit(wiring, conducts);
    }

    /** A cell's can is its minus, a board's two minus terminals are one (common practice). */
    private static int[] nets(Wiring wiring, Predicate<Part> conducts) {
        Nets nets = new Nets(wiring.size());
        for (int i = 0; i < wiring.parts().size(); i++) {
            Part part = wiring.parts().get(i);
            int first = wiring.firstOf(i);
            switch (part.kind()) {
                case CELL -> nets.join(first + MINUS, first + CAN);
                case BOARD -> nets.join(first + IN_MINUS, first + OUT_MINUS);
                default -> {
                    if (isMetal(part, conducts)) {
                        nets.join(first, first + 1);
                    }
                }
            }
        }
        wiring.joints().forEach(joint -> nets.join(joint[0], joint[1]));
        return nets.numbered();
    }

    private static boolean isMetal(Part part, Predicate<Part> conducts) {
        return switch (part.kind()) {
            case SWITCH, FUSE, METER -> conducts.test(part);
            case RESISTOR -> part.numberOrDefault("ohm") <= CONDUCTOR_OHM;
            default -> false;
        };
    }

    private void sort(Part part, int first, Predicate<Part> conducts) {
        switch (part.kind()) {
            case CELL, SUPPLY -> put(sources, part, first + MINUS, first);
            case COIL, CHARGER -> put(loads, part, first, first + 1);
            case BOARD -> {
                outputs.add(new Branch(part.id(), netOf[first + OUT_MINUS], netOf[first + OUT_PLUS]));
                put(loads, part, first, first + IN_MINUS);
            }
            case RESISTOR, SWITCH, FUSE, METER -> {
                if (!isMetal(part, conducts)) {
                    boolean load = part.kind() == PartKind.RESISTOR;
                    put(load ? loads : gaps, part, first, first + 1);
                }
            }
        }
    }

    private void put(List<Branch> list, Part part, int from, int to) {
        Branch branch = new Branch(part.id(), netOf[from], netOf[to]);
        list.add(branch);
        branches.put(part.id(), branch);
    }

    /** Sources that metal joins, pack by pack. */
    public List<Pack> packs() {
        return Packs.of(this);
    }

    /** Number of nets. */
    public int size() {
        return size;
    }

    /** The net of a terminal of this circuit. */
    public int net(TerminalRef terminal) {
        return netOf[wiring.number(terminal)];
    }

    /** The terminals of a net in file order. */
    public List<TerminalRef> terminals(int net) {
        if (terminals.isEmpty()) {
            IntStream.range(0, size).forEach(i -> terminals.add(new ArrayList<>(4)));
            for (int i = 0; i < netOf.length; i++) {
                terminals.get(netOf[i]).add(wiring.terminal(i));
            }
        }
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
