package org.sagwise.report.picture;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import java.util.Optional;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.look.WordWrap;
import org.sagwise.picture.pen.Align;
import org.sagwise.picture.pen.Pen;
import org.sagwise.picture.plot.Chart;
import org.sagwise.picture.plot.PlotPainter;

/**
 * A plot as a picture: its title, what the window shows, and the notice that this is a teaching
 * model. Needs no display.
 *
 * @param title what it is about
 * @param chart what it shows
 * @param now where things stand, in the values of the axes
 */
public record PlotPicture(String title, Chart chart, Optional<Point> now) {

    private static final double USUAL_WIDTH = 800;
    private static final double EDGE = 16;

    /** Writes it in a theme; the stream is not closed. */
    public void write(PictureFormat format, Locale locale, Theme theme, PictureSize size, OutputStream out)
            throws IOException {
        double zoom = size.width() / USUAL_WIDTH;
        Sheet sheet = surface -> {
            ThemedPen pen = new ThemedPen(surface, theme, 1);
            pen.scaled(zoom, 0, 0, () -> page(surface, pen, locale, size.height() / zoom));
        };
        BenchPicture.write(sheet, title, format, locale, size, out);
    }

    private void page(Pen surface, ThemedPen pen, Locale locale, double height) {
        double inner = USUAL_WIDTH - 2 * EDGE;
        pen.fill(new Box(0, 0, USUAL_WIDTH, height), Tone.PAPER);
        double y = EDGE;
        for (String text : WordWrap.lines(title, TextStyle.HEADLINE, inner)) {
            y += TextStyle.HEADLINE.lineHeight(1);
            pen.text(text, EDGE, y - 4, TextStyle.HEADLINE, Tone.INK, Align.LEFT);
        }
        NoticeFoot notice = NoticeFoot.of(locale, inner);
        double foot = height - notice.wordsHigh() - EDGE;
        double top = y + EDGE / 2;
        PlotPainter plot = new PlotPainter(chart, 1, inner, foot - EDGE / 2 - top);
        pen.within(EDGE, top, 0, () -> plot.paint(new ThemedPen(surface, pen.theme(), 1), now, Optional.empty()));
        notice.paint(pen, EDGE, USUAL_WIDTH - EDGE, foot, 4);
    }
}
