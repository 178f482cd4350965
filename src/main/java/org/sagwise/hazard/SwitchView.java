package org.sagwise.hazard;

import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.sagwise.circuit.Branch;
import org.sagwise.circuit.Conflict;
import org.sagwise.circuit.Conflicts;
import org.sagwise.circuit.Netlist;
import org.sagwise.circuit.Pack;
import org.sagwise.part.MeterMode;
import org.sagwise.part.PartKind;
import org.sagwise.reading.Bench;
import org.sagwise.reading.CellReading;
import org.sagwise.reading.LinkReading;
import org.sagwise.reading.PartReading;
import org.sagwise.reading.Readings;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.net.Nets;

/** The bench with the button in one position: what can be measured, and how it hangs together. */
final class SwitchView {

    /** Currents below this count as none, A: far above what a voltmeter takes. */
    static final double NO_CURRENT_A = 1e-3;

    private final Caution.When when;
    private final Bench bench;
    private final Nets byLinks;
    private final Readings readings;
    private final Map<String, CellView> cells = new LinkedHashMap<>();
    private final Map<String, PartReading> parts = new HashMap<>();
    private final Map<String, Integer> islands = new HashMap<>();
    private final Netlist circuit;
    private final List<Pack> packs;
    private final Map<Pack, Conflict> conflicts = new LinkedHashMap<>();

    private SwitchView(Bench bench, Nets byLinks, Press press, Caution.When when) {
        this.bench = bench;
        this.byLinks = byLinks;
        this.when = when;
        this.readings = press.isHeld() ? bench.fired() : bench.rest();
        for (CellReading cell : readings.cells()) {
            cells.put(
                    cell.id(),
                    new CellView(
                            cell,
                            bench.cells().get(cell.id()).spec(),
                            bench.start().cells().get(cell.id())));
        }
        readings.parts().forEach(part -> parts.put(part.id(), part));
        for (Part part : bench.scenario().parts()) {
            islands.put(
                    part.id(), readings.islands().getOrDefault(part.terminals().get(0), -1));
        }
        this.circuit = Netlist.of(bench.scenario(), byLinks, part -> isClosed(part) || isAmmeter(part));
        this.packs = circuit.packs();
    }

    static SwitchView atRest(Bench bench, Nets byLinks) {
        return new SwitchView(bench, byLinks, Press.RELEASED, Caution.When.AT_REST);
    }

    static SwitchView held(Bench bench, Nets byLinks) {
        return new SwitchView(bench, byLinks, Press.HELD, Caution.When.FIRED);
    }

    /**
     * Finds the conflicts, but for packs in which {@code other} has found one already.
     *
     * @param held where loads show where they hang
     */
    void judge(SwitchView held, SwitchView other) {
        Set<String> known = new HashSet<>();
        other.conflicts().forEach(c -> c.members().forEach(m -> known.add(m.part())));
        for (Pack pack : packs) {
            if (Collections.disjoint(known, pack.parts())) {
                Conflicts.in(pack, held.circuit).ifPresent(c -> conflicts.put(pack, c));
            }
        }
    }

    private boolean isClosed(Part part) {
        return part.kind() != PartKind.METER && parts.get(part.id()).state() == PartReading.State.WORKING;
    }

    private static boolean isAmmeter(Part part) {
        return part.isTurnedTo(MeterMode.AMPS);
    }

    /** The same circuit as if every meter were taken out. */
    Netlist withoutMeters() {
        return Netlist.of(bench.scenario(), byLinks, this::isClosed);
    }

    Caution.When when() {
        return when;
    }

    Readings readings() {
        return readings;
    }

    Netlist circuit() {
        return circuit;
    }

    List<Pack> packs() {
        return packs;
    }

    List<Conflict> conflicts() {
        return List.copyOf(conflicts.values());
    }

    CellView cell(String id) {
        return cells.get(id);
    }

    Map<String, CellView> cells() {
        return cells;
    }

    PartReading part(String id) {
        return parts.get(id);
    }

    /** Current of a cell or another part, A; NaN where it cannot be told. */
    double currentA(String id) {
        CellView cell = cells.get(id);
        return cell == null ? parts.get(id).currentA() : cell.currentA();
    }

    /** The source among some that carries most; one whose current cannot be told comes first. */
    String busiest(List<Branch> sources) {
        String busiest = sources.get(0).part();
        for (Branch source : sources) {
            if (Double.compare(Worst.rank(sizeA(source.part())), Worst.rank(sizeA(busiest))) > 0) {
                busiest = source.part();
            }
        }
        return busiest;
    }

    private double sizeA(String id) {
        return Math.abs(currentA(id));
    }

    /** Places of the links of an island that carry at least half of a current (A). */
    List<Integer> linksWithHalfOf(double currentA, String partOfIsland) {
        int island = island(partOfIsland);
        return readings.links().stream()
                .filter(link -> Math.abs(link.currentA()) >= Math.abs(currentA) / 2)
                .filter(link -> readings.islands().getOrDefault(link.from(), -1) == island)
                .map(LinkReading::index)
                .toList();
    }

    /** Island of a part: parts of different islands are not joined by anything. */
    int island(String id) {
        return islands.get(id);
    }
}
