package org.sagwise.scenario.edit;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/**
 * Joins cells anew as one pack: rows of cells side by side, the rows in series. Whatever was joined
 * to the plus and minus of the old pack is joined to those of the new one, coil and switch
 * included; where they lie loose on the bench, they are joined as well. All parts are laid out anew.
 * One cell alone is joined to what lies loose.
 *
 * @param cells ids of the cells, in the order in which they come
 * @param rows how many rows stand in series; 1 puts all cells in parallel, as many as there are
 *     cells puts all in series. Has to divide the number of cells
 * @param touchMohm contact resistance of the new joints where the old pack has none to go by, mΩ
 */
public record ArrangeCells(List<String> cells, int rows, double touchMohm) implements Edit {

    public ArrangeCells {
        cells = List.copyOf(cells);
        if (rows < 1 || cells.isEmpty() || cells.size() % rows != 0) {
            throw new IllegalArgumentException(rows + " rows of " + cells.size() + " cells");
        }
    }

    @Override
    public Scenario apply(Scenario before) {
        boolean allThere = cells.stream()
                .allMatch(id -> before.part(id)
                        .filter(part -> part.kind() == PartKind.CELL)
                        .isPresent());
        if (!allThere) {
            return before;
        }
        PackEnds ends = PackEnds.of(before, Set.copyOf(cells));
        Scenario bare = new CutLinks(ends.inner()).apply(before);
        Scenario moved = bare.withLinks(bare.links().stream()
                .map(link -> link.between(packEnd(ends, link.from()), packEnd(ends, link.to())))
                .toList());
        Keys joint = ends.joint().orElse(Keys.of("contact_mohm", touchMohm));
        Scenario joined = moved;
        for (int row = 0; row < rows; row++) {
            joined = plate(joined, row, "+", joint);
            joined = plate(joined, row, "-", joint);
            if (row > 0) {
                List<TerminalRef> step = List.of(end(row - 1, "-"), end(row, "+"));
                joined = new JoinTerminals(step, joint).apply(joined);
            }
        }
        Scenario closed = LoopCloser.close(joined, end(0, "+"), end(rows - 1, "-"), cells::contains, joint);
        Scenario after = withoutDoubles(closed);
        boolean nothingToJoin =
                cells.size() == 1 && after.links().size() == before.links().size();
        return nothingToJoin ? before : after.withPlacement(Map.of());
    }

    private Scenario plate(Scenario scenario, int row, String pole, Keys joint) {
        List<TerminalRef> terminals =
                row(row).stream().map(id -> new TerminalRef(id, pole)).toList();
        return terminals.size() < 2 ? scenario : new JoinTerminals(terminals, joint).apply(scenario);
    }

    private List<String> row(int row) {
        int width = cells.size() / rows;
        return cells.subList(row * width, (row + 1) * width);
    }

    private TerminalRef end(int row, String pole) {
        return new TerminalRef(row(row).get(0), pole);
    }

    private TerminalRef packEnd(PackEnds ends, TerminalRef old) {
        if (!ends.isOuter(old)) {
            return old;
        }
        return ends.isPlus(old) ? end(0, "+") : end(rows - 1, "-");
    }

    /** Two joints of the same ends, left from joints to several cells of one plate, become one. */
    private static Scenario withoutDoubles(Scenario scenario) {
        List<Link> links = scenario.links();
        Set<Integer> doubles = Set.copyOf(IntStream.range(0, links.size())
                .filter(i -> links.subList(0, i).stream()
                        .anyMatch(one ->
                                one.joins(links.get(i).from(), links.get(i).to())))
                .boxed()
                .toList());
        return new CutLinks(doubles).apply(scenario);
    }

    @Override
    public EditName name(Scenario before) {
        String how = cells.size() == 1 ? "one" : rows == 1 ? "parallel" : rows == cells.size() ? "series" : "rows";
        return EditName.of("arrange." + how, String.valueOf(cells.size()), String.valueOf(rows));
    }

    /** What the new pack would be called: cells in series and side by side, as in 2S2P. */
    public static String shortName(int cells, int rows) {
        return rows + "S" + cells / rows + "P";
    }

    /** The numbers of rows that so many cells can stand in, one first. */
    public static List<Integer> choices(int cells) {
        return IntStream.rangeClosed(1, cells)
                .filter(rows -> cells % rows == 0)
                .boxed()
                .toList();
    }

    /** The cells among some parts, in file order. */
    public static List<String> cellsAmong(Scenario scenario, Set<String> ids) {
        return scenario.partsOf(PartKind.CELL).stream()
                .map(Part::id)
                .filter(ids::contains)
                .toList();
    }
}
