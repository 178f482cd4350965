package org.sagwise.picture.look;

import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Line;
import org.sagwise.picture.geometry.Round;
import org.sagwise.picture.geometry.Shape;
import org.sagwise.picture.geometry.Transform;
import org.sagwise.picture.pen.Align;
import org.sagwise.picture.pen.Colour;
import org.sagwise.picture.pen.Pen;
import org.sagwise.picture.pen.Plain;
import org.sagwise.picture.pen.Stroke;

/**
 * Draws with the pen of any surface in the colours, sizes of text and widths of lines of a theme.
 *
 * <p>What lies at a place that is no number (NaN) or infinite is left away, since one surface would
 * draw it somewhere and another would fail.
 */
public final class ThemedPen {

    private static final double COARSE = 0.4;
    private static final double LEAST_READABLE = 5.2;

    /** Of a line this much is thickened; what is broad already grows by no more than that. */
    private static final double THIN = 3;

    private final Pen surface;
    private final Theme theme;
    private final double textScale;
    private final double zoom;
    private final double lineScale;

    /**
     * @param surface what is drawn on
     * @param theme whose colours are taken
     * @param textScale size of text against the usual one
     */
    public ThemedPen(Pen surface, Theme theme, double textScale) {
        this(surface, theme, textScale, 1, 1);
    }

    /**
     * @param zoom by how much what is drawn will be enlarged: what would come out too small to be
     *     made out is left away
     * @param lineScale by how much thin lines are thickened, 1 for none: for who sits far away
     */
    public ThemedPen(Pen surface, Theme theme, double textScale, double zoom, double lineScale) {
        this.surface = surface;
        this.theme = theme;
        this.textScale = textScale;
        this.zoom = zoom;
        this.lineScale = lineScale;
    }

    /** The same pen with text in another size. */
    public ThemedPen written(double otherTextScale) {
        return new ThemedPen(surface, theme, otherTextScale, zoom, lineScale);
    }

    public Theme theme() {
        return theme;
    }

    public double textScale() {
        return textScale;
    }

    /** Whether small ornaments would come out too small to be made out. */
    public boolean isCoarse() {
        return zoom < COARSE;
    }

    /** Whether words in a style would come out large enough to be read. */
    public boolean canBeRead(TextStyle style) {
        return style.size() * textScale * zoom >= LEAST_READABLE;
    }

    public Colour colour(Tone tone) {
        return theme.colour(tone);
    }

    public void fill(Shape shape, Tone tone) {
        fill(shape, colour(tone));
    }

    public void fill(Shape shape, Colour colour) {
        if (shape.isDrawable()) {
            surface.fill(shape, colour);
        }
    }

    public void draw(Shape shape, Tone tone, double width) {
        draw(shape, colour(tone), width);
    }

    /** Strokes with round ends and joins. */
    public void draw(Shape shape, Colour colour, double width) {
        stroke(shape, colour, Stroke.round(thick(width)));
    }

    /** Strokes with blunt ends, for what ends at an edge. */
    public void drawBlunt(Shape shape, Colour colour, double width) {
        stroke(shape, colour, Stroke.blunt(thick(width)));
    }

    public void drawDashed(Shape shape, Tone tone, double width, double... dashes) {
        stroke(shape, colour(tone), Stroke.dashed(thick(width), dashes));
    }

    private double thick(double width) {
        return width + (lineScale - 1) * Math.min(width, THIN);
    }

    /** Strokes with a stroke as it is, whatever widens others. */
    public void stroke(Shape shape, Colour colour, Stroke stroke) {
        if (shape.isDrawable()) {
            surface.stroke(shape, stroke, colour);
        }
    }

    public void line(double x1, double y1, double x2, double y2, Tone tone, double width) {
        draw(new Line(x1, y1, x2, y2), tone, width);
    }

    /**
     * Fills and outlines a rectangle with rounded corners. Two fills give the same picture as a
     * fill and a stroke and take half the time.
     */
    public void plate(Box area, double radius, Tone fill, Tone edge, double width) {
        fill(rounded(area, radius, thick(width) / 2), edge);
        fill(rounded(area, radius, -thick(width) / 2), fill);
    }

    private static Round rounded(Box area, double radius, double grown) {
        return new Round(area.grown(grown), Math.max(0, radius + grown));
    }

    /** Fills and outlines. */
    public void shape(Shape shape, Tone fill, Tone edge, double width) {
        fill(shape, fill);
        draw(shape, edge, width);
    }

    /**
     * Hatches an upright rectangle with lines that rise to the right.
     *
     * @param spacing distance of the lines along the edge
     */
    public void hatch(Box area, Tone tone, double spacing, double width) {
        drawBlunt(Hatching.of(area, spacing), colour(tone), width);
    }

    /** Writes a line of text, its baseline at {@code y}. */
    public void text(String text, double x, double y, TextStyle style, Tone tone, Align align) {
        String plain = Plain.text(text);
        if (!plain.isEmpty() && Double.isFinite(x + y)) {
            surface.text(plain, x, y, align, style.face(textScale), colour(tone));
        }
    }

    /** Writes a line of text, cut with an ellipsis where it is wider than allowed. */
    public void textWithin(String text, double x, double y, double width, TextStyle style, Tone tone, Align align) {
        text(shortened(text, width, style), x, y, style, tone, align);
    }

    /** Writes a line of text, smaller where it is wider than allowed: for figures, never cut. */
    public void textFit(String text, double x, double y, double width, TextStyle style, Tone tone, Align align) {
        double fit = Math.min(1, width / style.width(text, textScale));
        scaled(fit, x, y, () -> text(text, 0, 0, style, tone, align));
    }

    /** The text, cut with an ellipsis where it is wider than allowed. */
    public String shortened(String text, double width, TextStyle style) {
        if (style.width(text, textScale) <= width) {
            return text;
        }
        int length = text.length();
        while (length > 1 && style.width(text.substring(0, length) + "…", textScale) > width) {
            length--;
        }
        return text.substring(0, length).stripTrailing() + "…";
    }

    /** Draws something in a frame of its own, moved and turned by quarters clockwise. */
    public void within(double x, double y, int quarters, Runnable drawing) {
        surface.within(new Transform(1, quarters, x, y), drawing);
    }

    /** Draws something enlarged and moved. */
    public void scaled(double scale, double x, double y, Runnable drawing) {
        surface.within(new Transform(scale, 0, x, y), drawing);
    }

    /** Draws something of which only what lies in a box is seen. */
    public void clipped(Box area, Runnable drawing) {
        surface.clipped(area, drawing);
    }
}
