package org.sagwise.report.picture;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Locale;
import org.sagwise.part.CoilWinding;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Align;
import org.sagwise.picture.pen.Pen;
import org.sagwise.picture.winding.WindingPainter;
import org.sagwise.quantity.QuantityFormat;

/**
 * A wound coil to scale, with what it comes to under it and the notice that this is a teaching model.
 *
 * @param coil what is drawn
 * @param title what it is called
 * @param lines what is written under it, as label and value
 * @param locale language of the words
 * @param theme its colours
 * @param size how large it is
 */
public record WindingPicture(
        CoilWinding coil, String title, List<Line> lines, Locale locale, Theme theme, PictureSize size)
        implements Sheet {

    private static final double USUAL_WIDTH = 1000;
    private static final double EDGE = 24;
    private static final double HEAD = 60;
    private static final double LINE = 24;
    private static final int COLUMNS = 2;

    /** A label and a value. */
    public record Line(String label, String value) {}

    public WindingPicture {
        lines = List.copyOf(lines);
    }

    /**
     * Writes the picture. The stream is not closed.
     *
     * @throws IOException if the stream cannot be written to
     */
    public void write(PictureFormat format, OutputStream out) throws IOException {
        BenchPicture.write(this, title, format, locale, size, out);
    }

    @Override
    public void paint(Pen surface) {
        ThemedPen pen = new ThemedPen(surface, theme, 1);
        double zoom = size.width() / USUAL_WIDTH;
        pen.scaled(zoom, 0, 0, () -> page(pen, size.height() / zoom));
    }

    private void page(ThemedPen pen, double height) {
        pen.fill(new Box(0, 0, USUAL_WIDTH, height), Tone.PAPER);
        pen.textWithin(title, EDGE, 40, USUAL_WIDTH - 2 * EDGE, TextStyle.HEADLINE, Tone.INK, Align.LEFT);
        NoticeFoot notice = NoticeFoot.of(locale, USUAL_WIDTH - 2 * EDGE);
        double foot = notice.high();
        int rows = (lines.size() + COLUMNS - 1) / COLUMNS;
        double table = rows * LINE + 20;
        double bottom = height - foot - table;
        WindingPainter.paint(
                pen,
                coil,
                QuantityFormat.forPeople(locale),
                Box.between(EDGE, HEAD, USUAL_WIDTH - EDGE, Math.max(HEAD + 80, bottom)));
        for (int i = 0; i < lines.size(); i++) {
            double left = i / rows * 0.5 * USUAL_WIDTH + EDGE;
            double y = bottom + 20 + (i % rows + 0.7) * LINE;
            double right = left + 0.5 * USUAL_WIDTH - 2 * EDGE;
            double room = TextStyle.NAME.width(lines.get(i).value(), 1) + 12;
            pen.textWithin(lines.get(i).label(), left, y, right - left - room, TextStyle.PLAIN, Tone.MUTED, Align.LEFT);
            pen.text(lines.get(i).value(), right, y, TextStyle.NAME, Tone.INK, Align.RIGHT);
        }
        notice.paint(pen, EDGE, USUAL_WIDTH - EDGE, height - foot, 8);
    }
}
