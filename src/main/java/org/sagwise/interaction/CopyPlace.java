package org.sagwise.interaction;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.GridBox;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.layout.PartShape;

/** Finds where copies of parts lie: beside what was copied, and on nothing else. */
public final class CopyPlace {

    /** Copies lie at least this far from what was copied, in grid units. */
    private static final int GAP = 1;

    /** No bench is so crowded that a place farther off than this is worth it, in grid units. */
    private static final int FARTHEST = 60;

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

    private static boolean isFree(PartBox box, int step, List<GridBox> taken) {
        Box there = box.body().moved(step * PartShape.GRID, 0).box().grown(PartShape.LATTICE, 0);
        return taken.stream().map(GridBox::box).noneMatch(there::intersects);
    }
}
