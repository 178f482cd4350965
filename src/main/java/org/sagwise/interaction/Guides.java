package org.sagwise.interaction;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import org.sagwise.picture.geometry.Line;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.layout.PartBox;

/**
 * What helps to let go in the right place. Bench units.
 *
 * @param touches where terminals of what is held would touch others
 * @param lines from the middle of what is held to the nearest part that it is in line with, one
 *     across and one down at most
 */
public record Guides(List<Point> touches, List<Line> lines) {

    static final Guides NONE = new Guides(List.of(), List.of());

    public Guides {
        touches = List.copyOf(touches);
        lines = List.copyOf(lines);
    }

    /**
     * @param snap how what is held would come to lie
     * @param middles the middles of the parts that are held
     * @param others what lies there
     */
    static Guides of(Snap snap, List<Point> middles, List<PartBox> others) {
        List<Point> touches = snap.touches().stream()
                .map(touch -> new Point(touch.other().x(), touch.other().y()))
                .toList();
        List<Line> lines = new ArrayList<>();
        nearest(middles, others, true).ifPresent(lines::add);
        nearest(middles, others, false).ifPresent(lines::add);
        return new Guides(touches, lines);
    }

    private static Optional<Line> nearest(List<Point> middles, List<PartBox> others, boolean down) {
        ToIntFunction<PartBox> shared = down ? PartBox::x : PartBox::y;
        return middles.stream()
                .flatMap(from -> others.stream()
                        .filter(box -> shared.applyAsInt(box) == (down ? from.x() : from.y()))
                        .map(box -> new Line(from.x(), from.y(), box.x(), box.y())))
                .min(Comparator.comparingDouble(line -> Math.hypot(line.x2() - line.x1(), line.y2() - line.y1())));
    }
}
