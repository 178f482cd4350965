package org.sagwise.picture.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.sagwise.part.PartKind;
import org.sagwise.picture.geometry.GridBox;
import org.sagwise.picture.geometry.GridPoint;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/**
 * Lays a pack and its load out as a loop. A pack of cells side by side stands upright on the left,
 * the way leads along the top, down through the load on the right and back along the bottom. A pack
 * with cells in series lies along the top, and its load below.
 */
final class LoopArranger {

    private static final int CLEAR = PartShape.LATTICE;

    /** Width against height of the window in which a bench is usually seen. */
    private static final double USUAL_SHAPE = 1.9;

    private static final double UNUSUAL = 1.25;
    private static final int FEW = 2;

    private final Scenario scenario;
    private final Arranger arranger;

    LoopArranger(Scenario scenario, Arranger arranger) {
        this.scenario = scenario;
        this.arranger = arranger;
    }

    /**
     * Lays both out.
     *
     * @param pack from its negative end to its positive one
     * @param load from the pack's positive end to its negative one
     */
    Block arrange(Branch pack, Branch load) {
        int rise = rise(pack, load);
        Block upright = arranger.arrange(pack, Bearing.UP);
        Sides sides = Sides.of(load);
        boolean inARow = hasSeriesOfSources(pack);
        List<Choice> choices = new ArrayList<>();
        if (inARow) {
            Block lying = arranger.arrange(pack, Bearing.RIGHT);
            choices.add(
                    hasBoard(load)
                            ? new Choice(ring(lying, sides, 0), 1)
                            : new Choice(row(lying, arranger.arrange(load, Bearing.LEFT)), 1));
        }
        choices.add(new Choice(ring(upright, sides, rise), inARow ? UNUSUAL : 1));
        boolean many = Branch.parallelOf(pack).size() > FEW;
        choices.add(new Choice(ring(upright, sides.allOnTheRight(), rise), many && !inARow ? 1 : UNUSUAL));
        return choices.stream()
                .max(Comparator.comparingDouble(Choice::worth))
                .orElseThrow()
                .block();
    }

    /**
     * One way to lay a loop out.
     *
     * @param block the layout
     * @param handicap by how much larger it must come out than the usual way to be taken
     */
    private record Choice(Block block, double handicap) {

        /** How large it can be shown in a usual window, conductors above and below included. */
        double worth() {
            GridBox bounds = block.bounds();
            double height = bounds.height() + 2 * Arranger.STUB;
            return 1 / (handicap * Math.max(bounds.width() / USUAL_SHAPE, height));
        }
    }

    /** The pack alone. */
    Block arrange(Branch pack) {
        return arranger.arrange(pack, hasSeriesOfSources(pack) ? Bearing.RIGHT : Bearing.UP);
    }

    private static boolean hasBoard(Branch load) {
        return load.strands().anyMatch(strand -> strand.part().kind() == PartKind.BOARD);
    }

    private static boolean hasSeriesOfSources(Branch branch) {
        if (branch instanceof Branch.Series series) {
            long sources = series.branches().stream()
                    .filter(b -> b.has(Strand.Role.SOURCE))
                    .count();
            return sources > 1 || series.branches().stream().anyMatch(b -> hasSeriesOfSources(b));
        }
        return Branch.parallelOf(branch).stream()
                .filter(member -> member != branch)
                .anyMatch(LoopArranger::hasSeriesOfSources);
    }

    private static Block row(Block pack, Block load) {
        GridBox above = pack.bounds();
        GridBox below = load.bounds();
        int dx = Spot.toLattice(above.middleX() - below.middleX());
        int dy = Spot.toLattice(above.bottom() + 4.0 * CLEAR - below.y());
        return Block.union(List.of(pack, load.moved(dx, dy)), pack.entry(), pack.exit());
    }

    /**
     * How far above the pack the way to the load runs: higher where a wire must pass over plates.
     */
    private int rise(Branch pack, Branch load) {
        List<Branch> cells = Branch.parallelOf(pack);
        Set<String> nearest = ids(cells.get(cells.size() - 1));
        Set<String> farther = ids(pack);
        farther.removeAll(nearest);
        Set<String> behind = ids(load);
        boolean over = scenario.links().stream()
                .filter(link -> link.joint() instanceof Joint.Jumper)
                .anyMatch(link -> farther.stream().anyMatch(link::touches)
                        && behind.stream().anyMatch(link::touches));
        return over ? 2 * Arranger.STUB : Arranger.STUB;
    }

    private static Set<String> ids(Branch branch) {
        return branch.strands().map(Strand::part).map(Part::id).collect(Collectors.toSet());
    }

    private Block ring(Block pack, Sides sides, int rise) {
        int topY = pack.exit().y() - rise;
        GridPoint corner = new GridPoint(up(right(pack) + CLEAR), topY);
        Block top = chain(sides.top(), Bearing.RIGHT, corner);
        top = top.moved(Math.max(0, up(corner.x() - top.bounds().x())), 0);
        Block bottom = chain(sides.bottom(), Bearing.LEFT, corner);
        int rightOfAll = Math.max(right(top), right(pack) + bottom.bounds().width()) + CLEAR;
        Block side = chain(sides.right(), Bearing.DOWN, new GridPoint(0, 0));
        int low = Math.max(pack.entry().y() + Arranger.STUB, topY + height(side) + 2 * Arranger.STUB);
        int middle = Spot.toLattice((topY + low - height(side)) / 2.0);
        side = side.moved(
                up(rightOfAll - side.bounds().x()), middle - side.entry().y());
        bottom = bottom.moved(
                -up(right(bottom) - side.bounds().x()),
                Math.max(low, up(below(top) + 2 * CLEAR)) - bottom.entry().y());
        List<Block> all = new ArrayList<>(List.of(pack, top, side, bottom));
        return Block.union(all, pack.entry(), pack.exit());
    }

    private Block chain(List<Branch> branches, Bearing way, GridPoint start) {
        if (branches.isEmpty()) {
            return Block.empty(start);
        }
        Block block = arranger.arrange(new Branch.Series(branches), way);
        return block.moved(
                start.x() - block.entry().x(), start.y() - block.entry().y());
    }

    private static int height(Block side) {
        return side.exit().y() - side.entry().y();
    }

    private static int right(Block block) {
        return block.bounds().right();
    }

    private static int below(Block block) {
        return block.bounds().bottom();
    }

    private static int up(int length) {
        return Math.floorDiv(length + PartShape.LATTICE - 1, PartShape.LATTICE) * PartShape.LATTICE;
    }

    /** Members of a load by the side of the loop on which they lie. */
    private record Sides(List<Branch> top, List<Branch> right, List<Branch> bottom) {

        static Sides of(Branch load) {
            List<Branch> all = Branch.seriesOf(load);
            int first = 0;
            while (first < all.size() && !isLoad(all.get(first))) {
                first++;
            }
            int last = all.size() - 1;
            while (last >= first && !isLoad(all.get(last))) {
                last--;
            }
            return new Sides(all.subList(0, first), all.subList(first, last + 1), all.subList(last + 1, all.size()));
        }

        Sides allOnTheRight() {
            List<Branch> all = new ArrayList<>(top);
            all.addAll(right);
            all.addAll(bottom);
            return new Sides(List.of(), all, List.of());
        }

        private static boolean isLoad(Branch branch) {
            return branch.has(Strand.Role.LOAD) || branch.has(Strand.Role.SOURCE);
        }
    }
}
