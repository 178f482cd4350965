package org.sagwise.picture.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.sagwise.picture.geometry.GridBox;
import org.sagwise.picture.geometry.GridPoint;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/** Lays out a branch along a direction: series along it, parallel across it. */
final class Arranger {

    /** How far conductors run straight out of a terminal before they may turn. */
    static final int STUB = 2 * PartShape.LATTICE;

    private final Scenario scenario;
    private final Sizes sizes;

    Arranger(Scenario scenario, Sizes sizes) {
        this.scenario = scenario;
        this.sizes = sizes;
    }

    /** The branch with its way in a direction, beginning somewhere. */
    Block arrange(Branch branch, Bearing way) {
        if (branch instanceof Branch.Leaf leaf) {
            return leaf(leaf.strand(), way);
        }
        return branch instanceof Branch.Series series
                ? series(series.branches(), way)
                : parallel(Branch.parallelOf(branch), way);
    }

    private Block leaf(Strand strand, Bearing way) {
        Part part = strand.part();
        PartShape shape = sizes.shape(part.kind());
        Spot spot = new Spot(0, 0, quarters(strand, shape, way));
        Footprint footprint = Footprint.of(part, spot, sizes);
        return new Block(
                Map.of(part.id(), spot),
                Map.of(part.id(), footprint.room()),
                port(shape.pin(strand.entry(), spot.quarters()), way.opposite()),
                port(shape.pin(strand.exit(), spot.quarters()), way));
    }

    private static int quarters(Strand strand, PartShape shape, Bearing way) {
        if (shape.staysUpright()) {
            return 0;
        }
        boolean firstToSecond = shape.pins().get(0).terminal().equals(strand.entry());
        Bearing axis = firstToSecond ? shape.axis() : shape.axis().opposite();
        return axis.quartersTo(way);
    }

    /** Where the way meets a pin: at the pin itself, or at its stub if that points elsewhere. */
    private static GridPoint port(PartShape.Pin pin, Bearing expected) {
        int stub = pin.out() == expected ? 0 : STUB;
        return new GridPoint(
                pin.dx() + stub * pin.out().dx(), pin.dy() + stub * pin.out().dy());
    }

    private Block series(List<Branch> branches, Bearing way) {
        List<Block> placed = new ArrayList<>();
        for (Branch branch : branches) {
            Block next = arrange(branch, way);
            placed.add(placed.isEmpty() ? next : after(placed, next, gap(branches, placed), way));
        }
        return Block.union(placed, placed.get(0).entry(), last(placed).exit());
    }

    private int gap(List<Branch> branches, List<Block> placed) {
        Branch before = branches.get(placed.size() - 1);
        Branch after = branches.get(placed.size());
        boolean single = before instanceof Branch.Leaf && after instanceof Branch.Leaf;
        if (!single) {
            return 3 * STUB;
        }
        return touching(before, after) ? STUB : 2 * STUB;
    }

    private boolean touching(Branch before, Branch after) {
        String one = before.strands().findFirst().orElseThrow().part().id();
        String other = after.strands().findFirst().orElseThrow().part().id();
        return scenario.links().stream()
                .filter(link -> link.touches(one) && link.touches(other))
                .map(Link::joint)
                .noneMatch(Joint.Jumper.class::isInstance);
    }

    /** The next block put behind the one before, far enough that they do not overlap. */
    private static Block after(List<Block> placed, Block next, int gap, Bearing way) {
        Block before = last(placed);
        Block moved = at(next, before.exit(), gap, way);
        int missing = Math.max(0, reach(before, way) + reach(moved, way.opposite()));
        return moved.moved(up(missing) * way.dx(), up(missing) * way.dy());
    }

    /** How far a block reaches from the origin in a direction. */
    private static int reach(Block block, Bearing way) {
        GridBox bounds = block.bounds();
        return switch (way) {
            case UP -> -bounds.y();
            case DOWN -> bounds.y() + bounds.height();
            case LEFT -> -bounds.x();
            case RIGHT -> bounds.x() + bounds.width();
        };
    }

    private static int up(int length) {
        return (length + PartShape.LATTICE - 1) / PartShape.LATTICE * PartShape.LATTICE;
    }

    private static Block at(Block next, GridPoint end, int distance, Bearing way) {
        return next.moved(
                end.x() + distance * way.dx() - next.entry().x(),
                end.y() + distance * way.dy() - next.entry().y());
    }

    private Block parallel(List<Branch> branches, Bearing way) {
        Bearing across = way.isHorizontal() ? Bearing.DOWN : Bearing.RIGHT;
        List<Block> placed = new ArrayList<>();
        for (Branch branch : branches) {
            Block next = centred(arrange(branch, way), way);
            int shift = placed.isEmpty() ? 0 : reach(last(placed), across) + reach(next, across.opposite());
            placed.add(next.moved(up(shift) * across.dx(), up(shift) * across.dy()));
        }
        Block first = placed.get(0);
        return Block.union(placed, end(placed, first.entry(), way.opposite()), end(placed, first.exit(), way));
    }

    /** A block moved so that the middle of its way lies at the origin. */
    private static Block centred(Block block, Bearing way) {
        GridPoint entry = block.entry();
        GridPoint exit = block.exit();
        return way.isHorizontal()
                ? block.moved(-Spot.toLattice((entry.x() + exit.x()) / 2.0), -entry.y())
                : block.moved(-entry.x(), -Spot.toLattice((entry.y() + exit.y()) / 2.0));
    }

    /** The end of a parallel block: at its first branch, as far out as the farthest one. */
    private static GridPoint end(List<Block> placed, GridPoint first, Bearing out) {
        GridPoint end = first;
        for (Block block : placed) {
            for (GridPoint point : List.of(block.entry(), block.exit())) {
                int farther = (point.x() - end.x()) * out.dx() + (point.y() - end.y()) * out.dy();
                int by = Math.max(0, farther);
                end = end.moved(by * out.dx(), by * out.dy());
            }
        }
        return end;
    }

    private static Block last(List<Block> placed) {
        return placed.get(placed.size() - 1);
    }
}
