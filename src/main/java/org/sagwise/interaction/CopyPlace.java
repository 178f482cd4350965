package org.sagwise.interaction;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.sagwise.part.PartKind;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.GridBox;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.layout.PartShape;

/** Finds where parts lie that come anew: copies beside what was copied, others near by, and on nothing else. */
public final class CopyPlace {

    /** Copies lie at least this far from what was copied, in grid units. */
    private static final int GAP = 1;

    /** No bench is so crowded that a place farther off than this is worth it, in grid units. */
    private static final int FARTHEST = 60;

    /** A part from the shelf is looked a place for as far as this, in grid units. */
    private static final int FARTHEST_ROUND = 12;

    /** So much farther off counts what lies above or below. */
    private static final double UPRIGHT = 3;

    private CopyPlace() {}

    /** How far to the right the copies lie, in grid units. */
    public static int of(BenchLayout layout, Set<String> parts) {
        List<GridBox> taken = layout.parts().stream()
                .flatMap(box -> Stream.of(box.body(), box.label()))
                .toList();
        List<PartBox> copied =
                layout.parts().stream().filter(box -> parts.contains(box.id())).toList();
        double width = copied.stream()
                .mapToDouble(box -> box.body().union(box.label()).width())
                .max()
                .orElse(0);
        int least = (int) Math.ceil(width / PartShape.GRID) + GAP;
        return IntStream.rangeClosed(least, least + FARTHEST)
                .filter(step -> copied.stream().allMatch(box -> isFree(box, step, taken)))
                .findFirst()
                .orElse(least);
    }

    /**
     * The free place for a part that is nearest to a point, beside it rather than above or below:
     * whoever lays it down there by keyboard lays it on nothing else.
     *
     * @param near bench units
     */
    public static Point near(BenchLayout layout, PartKind kind, Point near) {
        PartShape shape = PartShape.of(kind, Drawing.BENCH);
        List<Box> taken = layout.parts().stream()
                .flatMap(box -> Stream.of(box.body().box(), box.label().box()))
                .toList();
        return IntStream.rangeClosed(-FARTHEST_ROUND, FARTHEST_ROUND)
                .boxed()
                .flatMap(down -> IntStream.rangeClosed(-FARTHEST_ROUND, FARTHEST_ROUND)
                        .mapToObj(right -> new Point(right, down)))
                .sorted(Comparator.comparingDouble(step -> step.x() * step.x() + UPRIGHT * step.y() * step.y()))
                .map(step -> new Point(near.x() + step.x() * PartShape.GRID, near.y() + step.y() * PartShape.GRID))
                .filter(at -> {
                    double wide = shape.halfWidth() + PartShape.GRID;
                    double high = shape.halfHeight() + PartShape.LATTICE;
                    Box there = new Box(at.x() - wide, at.y() - high, 2 * wide, 2 * high);
                    return taken.stream().noneMatch(there::intersects);
                })
                .findFirst()
                .orElse(near);
    }

    private static boolean isFree(PartBox box, int step, List<GridBox> taken) {
        Box there = box.body().moved(step * PartShape.GRID, 0).box().grown(PartShape.LATTICE, 0);
        return taken.stream().map(GridBox::box).noneMatch(there::intersects);
    }
}
