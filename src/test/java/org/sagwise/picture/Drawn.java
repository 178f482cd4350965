package org.sagwise.picture;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Shape;
import org.sagwise.picture.geometry.Transform;
import org.sagwise.picture.pen.Align;
import org.sagwise.picture.pen.Colour;
import org.sagwise.picture.pen.Face;
import org.sagwise.picture.pen.Pen;
import org.sagwise.picture.pen.Stroke;

/** A pen that keeps where words come to stand, in the coordinates of the surface. */
public final class Drawn implements Pen {

    /** Of a letter's body this much stands above the baseline and below it: figures and capitals reach no farther. */
    private static final double ASCENT = 0.66;

    private static final double DESCENT = 0.06;

    /**
     * Some words.
     *
     * @param place all that they cover
     * @param size height of the letters' body, pixels
     */
    public record Words(String text, Box place, double size) {}

    private final Deque<Frame> frames = new ArrayDeque<>(List.of(new Frame(1, 0, 0, 0)));
    private final List<Words> words = new ArrayList<>();

    /** A frame in the surface: scale, quarter turns, and where its origin lies. */
    private record Frame(double scale, int quarters, double x, double y) {

        Frame then(Transform inner) {
            double[] moved = place(inner.dx(), inner.dy());
            return new Frame(scale * inner.scale(), (quarters + inner.quarters()) % 4, moved[0], moved[1]);
        }

        double[] place(double innerX, double innerY) {
            double turnedX = innerX;
            double turnedY = innerY;
            for (int i = 0; i < quarters; i++) {
                double before = turnedX;
                turnedX = -turnedY;
                turnedY = before;
            }
            return new double[] {x + scale * turnedX, y + scale * turnedY};
        }

        Box box(double left, double top, double right, double bottom) {
            double[] one = place(left, top);
            double[] other = place(right, bottom);
            return Box.between(
                    Math.min(one[0], other[0]),
                    Math.min(one[1], other[1]),
                    Math.max(one[0], other[0]),
                    Math.max(one[1], other[1]));
        }
    }

    public List<Words> words() {
        return List.copyOf(words);
    }

    @Override
    public void fill(Shape shape, Colour colour) {}

    @Override
    public void stroke(Shape shape, Stroke stroke, Colour colour) {}

    @Override
    public void text(String text, double x, double y, Align align, Face face, Colour colour) {
        double left = face.left(text, x, align);
        Box place = frames.getLast()
                .box(left, y - ASCENT * face.size(), left + face.width(text), y + DESCENT * face.size());
        words.add(new Words(text, place, face.size() * frames.getLast().scale()));
    }

    @Override
    public void within(Transform frame, Runnable drawing) {
        frames.addLast(frames.getLast().then(frame));
        drawing.run();
        frames.removeLast();
    }

    @Override
    public void clipped(Box area, Runnable drawing) {
        drawing.run();
    }
}
