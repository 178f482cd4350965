package org.sagwise.hazard;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.sagwise.circuit.Branch;
import org.sagwise.circuit.Conflict;
import org.sagwise.circuit.Pack;
import org.sagwise.circuit.Row;
import org.sagwise.circuit.Rows;
import org.sagwise.part.CellSpec;
import org.sagwise.part.FuseSpec;
import org.sagwise.part.JumperWire;
import org.sagwise.part.PartKind;
import org.sagwise.part.WireSize;
import org.sagwise.reading.Bench;
import org.sagwise.reading.Readings;
import org.sagwise.reading.ResolvedCell;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.net.Nets;

/**
 * What hazard rules look at: the bench with the button let go and held. Both are looked at whatever
 * the scenario says, because somebody who builds a circuit will press it. What several rules ask is
 * worked out once, here.
 */
public final class HazardContext {

    private final Bench bench;
    private final SwitchView atRest;
    private final SwitchView held;
    private final PackCells packCells;
    private final List<Row> rows;
    private final List<String> torn;
    private final List<Optional<WireSize>> wires;
    private final Set<String> inConflict = new HashSet<>();
    private final List<ConflictCurrent> conflicts = new ArrayList<>();
    private final Map<PartKind, List<Part>> byKind = new EnumMap<>(PartKind.class);

    private HazardContext(Bench bench) {
        this.bench = bench;
        Nets byLinks = Nets.of(bench.scenario(), bench::joins);
        atRest = SwitchView.atRest(bench, byLinks);
        held = SwitchView.held(bench, byLinks);
        atRest.judge(held, held);
        held.judge(held, atRest);
        packCells = new PackCells(
                atRest, held, held.packs().stream().map(this::cellsOf).toList());
        rows = Rows.of(held.circuit());
        for (SwitchView view : views()) {
            for (Conflict conflict : view.conflicts()) {
                conflicts.add(new ConflictCurrent(view, conflict));
                conflict.members().forEach(member -> inConflict.add(member.part()));
            }
        }
        torn = bench.cells().values().stream()
                .filter(ResolvedCell::isTorn)
                .map(ResolvedCell::id)
                .toList();
        wires = bench.scenario().links().stream().map(HazardContext::wire).toList();
        for (Part part : bench.scenario().parts()) {
            byKind.computeIfAbsent(part.kind(), kind -> new ArrayList<>()).add(part);
        }
    }

    private static Optional<WireSize> wire(Link link) {
        return link.joint() instanceof Joint.Jumper jumper ? jumper.wire().map(JumperWire::size) : Optional.empty();
    }

    public static HazardContext of(Bench bench) {
        return new HazardContext(bench);
    }

    public Bench bench() {
        return bench;
    }

    /** Readings at the instant at which the button is pressed. */
    public Readings fired() {
        return held.readings();
    }

    SwitchView atRest() {
        return atRest;
    }

    SwitchView held() {
        return held;
    }

    /** First with the button let go, then held: what shows at rest is not reported once more. */
    List<SwitchView> views() {
        return List.of(atRest, held);
    }

    /** Cells in series, with the button held. */
    List<Row> rows() {
        return rows;
    }

    Part part(String id) {
        return bench.part(id);
    }

    List<Part> partsOf(PartKind kind) {
        return byKind.getOrDefault(kind, List.of());
    }

    CellSpec spec(String cell) {
        return bench.cells().get(cell).spec();
    }

    boolean isCell(Branch source) {
        return bench.cells().containsKey(source.part());
    }

    /** The cells of a pack, without its supplies. */
    List<String> cellsOf(Pack pack) {
        return pack.parts().stream().filter(bench.cells()::containsKey).toList();
    }

    /** What the values of a part mean, such as a {@link FuseSpec}. */
    <T> T spec(String id, Class<T> type) {
        return bench.spec(id, type);
    }

    /** The cells of every pack of two or more, with the button held. */
    List<List<String>> teams() {
        return held.packs().stream()
                .map(this::cellsOf)
                .filter(cells -> cells.size() > 1)
                .toList();
    }

    /**
     * The conflicts of one kind: those with the button let go, then those that only show when it is
     * held.
     */
    List<ConflictCurrent> conflicts(Conflict.Kind kind) {
        return conflicts.stream()
                .filter(current -> current.conflict().kind() == kind)
                .toList();
    }

    /** Whether a source fights others of its pack, in either position of the button. */
    boolean isInConflict(String source) {
        return inConflict.contains(source);
    }

    /** Cells whose wrap is torn, in file order. */
    List<String> torn() {
        return torn;
    }

    /** The wire of a link; empty if it is no jumper or one without length. */
    Optional<WireSize> wire(int link) {
        return wires.get(link);
    }

    /** Whether a charger or a supply gives current in the island of a part. */
    boolean isCharging(SwitchView view, String partOfIsland) {
        int island = view.island(partOfIsland);
        return view.readings().parts().stream()
                .filter(part -> part.kind() == PartKind.CHARGER || part.kind() == PartKind.SUPPLY)
                .filter(part -> part.currentA() > SwitchView.NO_CURRENT_A)
                .anyMatch(part -> view.island(part.id()) == island);
    }

    /**
     * Pack by pack the cells to which something happens: with the button let go, else held.
     *
     * @param happens whether it does
     * @param size how much of it; NaN counts as most
     */
    List<PackCells.Hit> cells(Predicate<CellView> happens, ToDoubleFunction<CellView> size) {
        return packCells.find(happens, size);
    }
}
