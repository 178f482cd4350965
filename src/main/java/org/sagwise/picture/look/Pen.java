package org.sagwise.picture.look;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.EnumMap;
import java.util.Map;

/**
 * Draws on any surface in the colours of a theme. Uses only what screen, PNG, SVG and PDF surfaces
 * all understand: plain colours, strokes, shapes and lines of text.
 */
public final class Pen {

    private static final double COARSE = 0.4;
    private static final double LEAST_READABLE = 5.2;

    /** Of a line this much is thickened; what is broad already grows by no more than that. */
    private static final double THIN = 3;

    private final Graphics2D surface;
    private final Theme theme;
    private final double textScale;
    private final double zoom;
    private final double lineScale;
    private final Map<TextStyle, Font> fonts = new EnumMap<>(TextStyle.class);

    /**
     * @param surface what is drawn on
     * @param theme whose colours are taken
     * @param textScale size of text against the usual one
     */
    public Pen(Graphics2D surface, Theme theme, double textScale) {
        this(surface, theme, textScale, 1, 1);
    }

    /**
     * @param zoom by how much what is drawn will be enlarged: what would come out too small to be
     *     made out is left away
     * @param lineScale by how much thin lines are thickened, 1 for none: for who sits far away
     */
    public Pen(Graphics2D surface, Theme theme, double textScale, double zoom, double lineScale) {
        this.surface = surface;
        this.theme = theme;
        this.textScale = textScale;
        this.zoom = zoom;
        this.lineScale = lineScale;
        surface.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        surface.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        surface.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        surface.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
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

    public Color colour(Tone tone) {
        return theme.colour(tone);
    }

    public void fill(Shape shape, Tone tone) {
        fill(shape, colour(tone));
    }

    public void fill(Shape shape, Color colour) {
        surface.setColor(colour);
        surface.fill(shape);
    }

    public void draw(Shape shape, Tone tone, double width) {
        draw(shape, colour(tone), width);
    }

    /** Strokes with round ends and joins. */
    public void draw(Shape shape, Color colour, double width) {
        stroke(shape, colour, new BasicStroke(thick(width), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    }

    /** Strokes with blunt ends, for what ends at an edge. */
    public void drawBlunt(Shape shape, Color colour, double width) {
        stroke(shape, colour, new BasicStroke(thick(width), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
    }

    public void drawDashed(Shape shape, Tone tone, double width, float... dashes) {
        stroke(
                shape,
                colour(tone),
                new BasicStroke(thick(width), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 4, dashes, 0));
    }

    private float thick(double width) {
        return (float) (width + (lineScale - 1) * Math.min(width, THIN));
    }

    private void stroke(Shape shape, Color colour, BasicStroke stroke) {
        surface.setColor(colour);
        surface.setStroke(stroke);
        surface.draw(shape);
    }

    public void line(double x1, double y1, double x2, double y2, Tone tone, double width) {
        draw(new Line2D.Double(x1, y1, x2, y2), tone, width);
    }

    /**
     * Fills and outlines a rectangle with rounded corners. Two fills give the same picture as a
     * fill and a stroke and take half the time.
     */
    public void plate(Rectangle2D area, double radius, Tone fill, Tone edge, double width) {
        fill(rounded(area, radius, thick(width) / 2), edge);
        fill(rounded(area, radius, -thick(width) / 2), fill);
    }

    private static Shape rounded(Rectangle2D area, double radius, double grown) {
        double arc = Math.max(0, 2 * (radius + grown));
        return new RoundRectangle2D.Double(
                area.getX() - grown,
                area.getY() - grown,
                area.getWidth() + 2 * grown,
                area.getHeight() + 2 * grown,
                arc,
                arc);
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
    public void hatch(Rectangle2D area, Tone tone, double spacing, double width) {
        drawBlunt(Hatching.of(area, spacing), colour(tone), width);
    }

    /** Writes a line of text, its baseline at {@code y}. */
    public void text(String text, double x, double y, TextStyle style, Tone tone, Align align) {
        if (text.isEmpty()) {
            return;
        }
        String plain = Plain.text(text);
        double shift = align == Align.LEFT ? 0 : align.share() * style.width(plain, textScale);
        surface.setColor(colour(tone));
        surface.setFont(font(style));
        surface.drawString(plain, (float) (x - shift), (float) y);
    }

    private Font font(TextStyle style) {
        return fonts.computeIfAbsent(style, key -> Typeface.of(key.weight(), key.size() * textScale));
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
        AffineTransform before = surface.getTransform();
        surface.translate(x, y);
        surface.transform(AffineTransform.getQuadrantRotateInstance(quarters));
        drawing.run();
        surface.setTransform(before);
    }

    /** Draws something enlarged and moved. */
    public void scaled(double scale, double x, double y, Runnable drawing) {
        AffineTransform before = surface.getTransform();
        surface.translate(x, y);
        surface.scale(scale, scale);
        drawing.run();
        surface.setTransform(before);
    }
}
