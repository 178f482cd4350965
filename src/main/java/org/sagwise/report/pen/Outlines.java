package org.sagwise.report.pen;

import java.awt.Font;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.PathIterator;
import java.util.Arrays;
import java.util.Optional;
import org.sagwise.picture.pen.Face;

/** The letters of the bundled typeface as outlines, for pictures that must look alike wherever they are shown. */
public final class Outlines implements SvgPen.Letters {

    private static final FontRenderContext UNHINTED = new FontRenderContext(null, true, true);

    private static final int MOST_PLACES = 6;

    /** Of a pixel: more than anybody sees. */
    private static final double PARTS = 100;

    /** Empty where the typeface lacks a letter: the reader's own may have it. */
    @Override
    public Optional<String> drawn(String text, double x, double y, Face face, SvgPen.Lengths lengths) {
        Font font = Fonts.of(face);
        if (font.canDisplayUpTo(text) >= 0) {
            return Optional.empty();
        }
        Trace trace = new Trace(lengths);
        double left = x;
        for (int sign : text.codePoints().toArray()) {
            String letter = Character.toString(sign);
            trace.add(font.createGlyphVector(UNHINTED, letter).getOutline((float) left, (float) y));
            left += face.width(letter);
        }
        return Optional.of(trace.path.toString());
    }

    /** Steps from place to place, which take fewer digits than the places; rounding does not add up. */
    private static final class Trace {

        private final SvgPen.Lengths lengths;
        private final StringBuilder path = new StringBuilder();
        private double x;
        private double y;
        private double beginX;
        private double beginY;

        Trace(SvgPen.Lengths lengths) {
            this.lengths = lengths;
        }

        void add(Shape outline) {
            double[] at = new double[MOST_PLACES];
            for (PathIterator steps = outline.getPathIterator(null); !steps.isDone(); steps.next()) {
                switch (steps.currentSegment(at)) {
                    case PathIterator.SEG_MOVETO -> {
                        step('m', at, 2);
                        beginX = x;
                        beginY = y;
                    }
                    case PathIterator.SEG_LINETO -> step('l', at, 2);
                    case PathIterator.SEG_QUADTO -> step('q', at, 4);
                    case PathIterator.SEG_CUBICTO -> step('c', at, MOST_PLACES);
                    default -> {
                        path.append('z');
                        x = beginX;
                        y = beginY;
                    }
                }
            }
        }

        private void step(char step, double[] at, int count) {
            double[] to = Arrays.copyOf(at, count);
            for (int i = 0; i < count; i++) {
                double from = i % 2 == 0 ? x : y;
                String length = lengths.say(rounded(to[i]) - from);
                path.append(i == 0 ? String.valueOf(step) : length.startsWith("-") ? "" : " ")
                        .append(length);
            }
            x = rounded(to[count - 2]);
            y = rounded(to[count - 1]);
        }

        private static double rounded(double length) {
            return Math.rint(length * PARTS) / PARTS;
        }
    }
}
