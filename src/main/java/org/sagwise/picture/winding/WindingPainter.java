package org.sagwise.picture.winding;

import org.sagwise.part.CoilWinding;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Line;
import org.sagwise.picture.geometry.Oval;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Align;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.text.Texts;

/**
 * Draws a wound coil from its side and, beside it, along its axis, both in one scale with a measure under them: core,
 * wraps and strands are as thick and as wide as they are. Ends longer than the room are cut.
 */
public final class WindingPainter {

    /** More strokes than these would run into one another. */
    private static final int MOST_DRAWN = 400;

    private static final double EDGE = 16;
    private static final double GAP = 40;

    /** Words nearer to each other than this stand on two lines, in pixels. */
    private static final double LEAST_APART = 12;

    private static final double M_PER_MM = 1e-3;
    private static final double SHARE_OF_HEIGHT = 0.48;
    private static final double[] MEASURES_MM = {0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000};

    private final ThemedPen pen;
    private final CoilWinding coil;
    private final QuantityFormat format;
    private final Box area;
    private final double perMm;
    private final double coreMm;
    private final double wireMm;
    private final double outerMm;

    private WindingPainter(ThemedPen pen, CoilWinding coil, QuantityFormat format, Box area) {
        this.pen = pen;
        this.coil = coil;
        this.format = format;
        this.area = area;
        this.coreMm = coil.innerDiameterM() / M_PER_MM;
        this.wireMm = coil.wire().diameterM() / M_PER_MM;
        this.outerMm = coreMm + 2 * wireMm;
        double across = area.width() - 2 * EDGE - GAP;
        this.perMm = Math.min(SHARE_OF_HEIGHT * area.height() / outerMm, across / (coil.widthMm() + 1.6 * outerMm));
    }

    /** Draws it as large as an area allows. */
    public static void paint(ThemedPen pen, CoilWinding coil, QuantityFormat format, Box area) {
        new WindingPainter(pen, coil, format, area).paint();
    }

    private void paint() {
        double middle = area.y() + 0.4 * area.height();
        double whole = (coil.widthMm() + outerMm) * perMm + GAP;
        double left = area.middleX() - 0.5 * whole;
        Box above = Box.between(area.x(), area.y(), area.right(), bottom());
        pen.clipped(above, () -> {
            side(left, middle);
            axis(left + coil.widthMm() * perMm + GAP + 0.5 * outerMm * perMm, middle);
        });
        words(left, middle);
        measure();
    }

    /** Where the measure begins. */
    private double bottom() {
        return area.bottom() - 36 * pen.textScale();
    }

    private void side(double left, double middle) {
        double width = coil.widthMm() * perMm;
        double core = coreMm * perMm;
        double beyond = Math.min(0.3 * outerMm * perMm, 0.5 * GAP);
        Box rod = new Box(left - beyond, middle - 0.5 * core, width + 2 * beyond, core);
        pen.fill(rod, Tone.CERAMIC);
        pen.drawDashed(rod, Tone.MUTED, 1, 5, 4);
        int strands = coil.wire().strands();
        double drawn = coil.wraps() * strands;
        double pitch = strands * wireMm * perMm;
        double wire = wireMm * perMm;
        double radius = 0.5 * (coreMm + wireMm) * perMm;
        legs(left + 0.5 * wire, left + width - 0.5 * wire, middle, radius, wire);
        if (drawn > MOST_DRAWN) {
            pen.plate(new Box(left, middle - radius, width, 2 * radius), 0.5 * wire, Tone.METAL_DARK, Tone.EDGE, 0.8);
            return;
        }
        double lean = Math.min(0.5 * pitch, 0.5 * wire);
        int whole = (int) Math.ceil(coil.wraps() - 1e-9);
        for (int wrap = 0; wrap < whole; wrap++) {
            double part = Math.min(1, coil.wraps() - wrap);
            for (int strand = 0; strand < strands; strand++) {
                double x = left + wrap * pitch + (strand + 0.5) * wire;
                strand(x - 0.5 * lean, middle - radius, x + 0.5 * lean, middle - radius + 2 * radius * part, wire);
            }
        }
    }

    private void strand(double x1, double y1, double x2, double y2, double wire) {
        Line line = new Line(x1, y1, x2, y2);
        double edge = Math.min(1.2, 0.25 * wire);
        pen.draw(line, Tone.EDGE, wire);
        pen.draw(line, Tone.METAL, Math.max(0.4, wire - 2 * edge));
        if (wire > 6) {
            pen.draw(new Line(x1 - 0.15 * wire, y1, x2 - 0.15 * wire, y2), Tone.METAL_LIGHT, 0.18 * wire);
        }
    }

    /** Both ends, straight down; half of their length each. */
    private void legs(double first, double last, double middle, double radius, double wire) {
        double half = 0.5 * coil.legsM() / M_PER_MM * perMm;
        if (half > 0) {
            double end = Math.min(middle + half, area.bottom() + wire);
            strand(first, middle, first, Math.max(middle + radius, end), wire);
            strand(last, middle, last, Math.max(middle + radius, end), wire);
        }
    }

    private void axis(double x, double y) {
        double outer = 0.5 * outerMm * perMm;
        double inner = 0.5 * coreMm * perMm;
        pen.shape(Oval.circle(x, y, outer), Tone.METAL, Tone.EDGE, 1.2);
        pen.shape(Oval.circle(x, y, inner), Tone.CERAMIC, Tone.EDGE, 1.2);
    }

    private void words(double left, double middle) {
        double top = middle - 0.5 * outerMm * perMm - 12;
        double width = coil.widthMm() * perMm;
        double x = left + width + GAP + 0.5 * outerMm * perMm;
        double line = TextStyle.SMALL.lineHeight(pen.textScale());
        String wide = say("width", mm(coil.widthMm()));
        String outer = say("outer", mm(outerMm));
        double apart = x - left - 0.5 * width - 0.5 * (width(wide) + width(outer));
        text(wide, left + 0.5 * width, apart < LEAST_APART ? top - line : top);
        text(outer, x, top);
        text(say("core", mm(coreMm)), x, middle + 0.5 * outerMm * perMm + line + 4);
    }

    private double width(String words) {
        return TextStyle.SMALL.width(words, pen.textScale());
    }

    private void text(String words, double x, double y) {
        double half = 0.5 * width(words);
        double within = Math.max(area.x() + half, Math.min(area.right() - half, x));
        pen.text(words, within, y, TextStyle.SMALL, Tone.INK, Align.MIDDLE);
    }

    /** A measure to lay against the picture, with the ends' length, which may be cut. */
    private void measure() {
        double most = 0.3 * area.width() / perMm;
        double mm = MEASURES_MM[0];
        for (double each : MEASURES_MM) {
            mm = each <= most ? each : mm;
        }
        double length = mm * perMm;
        double y = area.bottom() - 10;
        double x = area.x() + EDGE;
        pen.line(x, y, x + length, y, Tone.INK, 2);
        pen.line(x, y - 5, x, y + 5, Tone.INK, 2);
        pen.line(x + length, y - 5, x + length, y + 5, Tone.INK, 2);
        pen.text(mm(mm) + ", " + say("scale"), x + length + 10, y + 4, TextStyle.SMALL, Tone.INK, Align.LEFT);
        if (coil.legsM() > 0) {
            String legs = say("legs", mm(coil.legsM() / M_PER_MM));
            pen.text(legs, area.right() - EDGE, y + 4, TextStyle.SMALL, Tone.MUTED, Align.RIGHT);
        }
    }

    private String mm(double mm) {
        return format.print(mm * M_PER_MM, Unit.METRE);
    }

    private String say(String key, String words) {
        return Texts.in("picture", format.locale()).say("winding." + key, words);
    }

    private String say(String key) {
        return Texts.in("picture", format.locale()).say("winding." + key);
    }
}
