package org.sagwise.picture.plot;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Line;
import org.sagwise.picture.look.Series;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Align;

/**
 * The names of lines and bands above a chart, each behind a piece of it, in as many rows as they
 * need.
 *
 * @param names where each stands
 * @param height of all rows, pixels
 */
record NameRow(List<Name> names, double height) {

    private static final double SAMPLE = 26;
    private static final double SPACE = 16;

    /** A name at its place: left end and baseline. */
    record Name(String text, Series series, boolean isBand, double x, double y) {}

    /** The names of a chart that wants them told. */
    static NameRow of(Chart chart, double textScale, double width) {
        List<Name> names = new ArrayList<>();
        if (!chart.isNamed()) {
            return new NameRow(names, 0);
        }
        double line = 1.15 * TextStyle.SMALL.lineHeight(textScale);
        List<Name> wanted = new ArrayList<>();
        chart.curves().forEach(it -> wanted.add(new Name(it.name(), it.series(), false, 0, 0)));
        chart.bands().forEach(it -> wanted.add(new Name(it.name(), it.series(), true, 0, 0)));
        double x = 0;
        double y = line;
        for (Name name : wanted) {
            double wide = SAMPLE + PlotPainter.GAP + TextStyle.SMALL.width(name.text(), textScale);
            if (x > 0 && x + wide > width) {
                x = 0;
                y += line;
            }
            names.add(new Name(name.text(), name.series(), name.isBand(), x + PlotPainter.GAP, y - 0.3 * line));
            x += wide + SPACE;
        }
        return new NameRow(names, wanted.isEmpty() ? 0 : y);
    }

    void paint(ThemedPen pen) {
        double rise = 0.32 * TextStyle.SMALL.size() * pen.textScale();
        for (Name name : names) {
            double y = name.y() - rise;
            if (name.isBand()) {
                pen.fill(
                        new Box(name.x(), y - rise, SAMPLE, 2 * rise),
                        name.series().colour().withAlpha(LinePainter.BAND_ALPHA));
            } else {
                pen.stroke(
                        new Line(name.x(), y, name.x() + SAMPLE, y),
                        name.series().colour(),
                        name.series().stroke(LinePainter.MAIN_WIDTH));
            }
            pen.text(name.text(), name.x() + SAMPLE + PlotPainter.GAP, name.y(), TextStyle.SMALL, Tone.INK, Align.LEFT);
        }
    }
}
