package org.sagwise.ui.kit;

import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.PathIterator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.pen.Face;
import org.sagwise.picture.pen.Typeface.Weight;
import org.sagwise.report.pen.Fonts;

/** Outlines of the letters that were asked for, each worked out once. */
final class Letters {

    /** Size of the face whose outlines these are: large, so that no curve is rounded. */
    static final double SIZE = 1000;

    private static final FontRenderContext SMOOTH = new FontRenderContext(null, true, true);

    private final Map<Weight, Map<Integer, Letter>> known = new EnumMap<>(Weight.class);

    /**
     * A letter.
     *
     * @param outline from its place on the baseline
     * @param width to where the next one begins
     */
    record Letter(Path outline, double width) {}

    Letter of(Weight weight, int point) {
        return known.computeIfAbsent(weight, key -> new HashMap<>())
                .computeIfAbsent(point, key -> letter(new Face(weight, SIZE), Character.toString(point)));
    }

    private static Letter letter(Face face, String letter) {
        GlyphVector glyph = Fonts.of(face).createGlyphVector(SMOOTH, letter);
        Path.Builder outline = new Path.Builder();
        double[] at = new double[6];
        for (PathIterator way = glyph.getOutline().getPathIterator(null); !way.isDone(); way.next()) {
            switch (way.currentSegment(at)) {
                case PathIterator.SEG_MOVETO -> outline.moveTo(at[0], at[1]);
                case PathIterator.SEG_LINETO -> outline.lineTo(at[0], at[1]);
                case PathIterator.SEG_QUADTO -> outline.quadTo(at[0], at[1], at[2], at[3]);
                case PathIterator.SEG_CUBICTO -> outline.curveTo(at[0], at[1], at[2], at[3], at[4], at[5]);
                default -> outline.close();
            }
        }
        return new Letter(outline.build(), face.width(letter));
    }
}
