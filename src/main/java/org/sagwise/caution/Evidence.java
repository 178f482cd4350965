package org.sagwise.caution;

import org.sagwise.caution.circuit.Branch;
import org.sagwise.caution.circuit.Pack;
import org.sagwise.caution.circuit.Row;
import org.sagwise.caution.circuit.Rows;
import org.sagwise.part.CellSpec;
import org.sagwise.reading.Bench;
import org.sagwise.reading.CellReading;
import org.sagwise.reading.CellState;
import org.sagwise.reading.Readings;
import org.sagwise.reading.ResolvedParts;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.PartKind;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * What hazard rules look at: the bench with the button let go and held. Both are looked at whatever
 * the scenario says, because somebody who builds a circuit will press it. What several rules ask is
 * worked out once, here.
 */
public final class Evidence {

    private final Bench bench;
    private final Look atRest;
    private final Look held;
    private final List<Row> rows;
    private final Map<String, Part> parts = new HashMap<>();

    private Evidence(Bench bench) {
        this.bench = bench;
        atRest = Look.atRest(bench);
        held = Look.held(bench);
        atRest.judge(held);
        held.judge(held);
        rows = Rows.of(held.circuit());
        bench.scenario().parts().forEach(part -> parts.put(part.id(), part));
    }

    public static Evidence of(Bench bench) {
        return new Evidence(bench);
    }

    public Bench bench() {
        return bench;
    }

    /** Readings with the button let go. */
    public Readings rest() {
        return atRest.readings();
    }

    /** Readings at the instant at which the button is pressed. */
    public Readings fired() {
        return held.readings();
    }

    Look atRest() {
        return atRest;
    }

    Look held() {
        return held;
    }

    /** First with the button let go, then held: what shows at rest is not reported once more. */
    List<Look> looks() {
        return List.of(atRest, held);
    }

    /** Cells in series, with the button held. */
    List<Row> rows() {
        return rows;
    }

    Part part(String id) {
        return parts.get(id);
    }

    CellSpec spec(String cell) {
        return bench.cells().get(cell).spec();
    }

    CellState state(String cell) {
        return bench.start().cells().get(cell);
    }

    boolean isCell(Branch source) {
        return bench.cells().containsKey(source.part());
    }

    /** The cells of a pack, without its supplies. */
    List<String> cellsOf(Pack pack) {
        return pack.parts().stream().filter(bench.cells()::containsKey).toList();
    }

    ResolvedParts.Fuse fuse(String id) {
        return ResolvedParts.fuse(part(id), bench.catalogue());
    }

    ResolvedParts.Board board(String id) {
        return ResolvedParts.board(part(id), bench.catalogue());
    }

    ResolvedParts.Charger charger(Part charger) {
        return ResolvedParts.charger(charger, bench.catalogue());
    }

    /** The cells of every pack of two or more, with the button held. */
    List<List<String>> teams() {
        return held.packs().stream().map(this::cellsOf).filter(cells -> cells.size() > 1).toList();
    }

    /** Whether sources of a pack fight each other, in either position of the button. */
    boolean isInConflict(String source) {
        return looks().stream()
                .flatMap(look -> look.conflicts().stream())
                .flatMap(conflict -> conflict.members().stream())
                .anyMatch(member -> member.part().equals(source));
    }

    /** Whether a charger or a supply gives current in the island of a part. */
    boolean isCharging(Look look, String partOfIsland) {
        int island = look.island(partOfIsland);
        return look.readings().parts().stream()
                .filter(part -> part.kind() == PartKind.CHARGER || part.kind() == PartKind.SUPPLY)
                .filter(part -> part.currentA() > Look.NO_CURRENT_A)
                .anyMatch(part -> look.island(part.id()) == island);
    }

    /**
     * Cells of one pack to which the same happens.
     *
     * @param look in which position of the button
     * @param worstFirst the cells
     */
    record Cells(Look look, List<CellReading> worstFirst) {

        CellReading worst() {
            return worstFirst.get(0);
        }

        List<String> ids() {
            return worstFirst.stream().map(CellReading::id).toList();
        }
    }

    /**
     * Pack by pack the cells to which something happens: with the button let go, else held.
     *
     * @param happens whether it does
     * @param size how much of it; NaN counts as most
     */
    List<Cells> cells(Predicate<CellReading> happens, ToDoubleFunction<CellReading> size) {
        List<Cells> found = new ArrayList<>();
        for (Pack pack : held.packs()) {
            for (Look look : looks()) {
                List<CellReading> cells =
                        cellsOf(pack).stream()
                                .map(look::cell)
                                .filter(happens)
                                .sorted(Comparator.comparingDouble(size).reversed())
                                .toList();
                if (!cells.isEmpty()) {
                    found.add(new Cells(look, cells));
                    break;
                }
            }
        }
        return found;
    }
}
