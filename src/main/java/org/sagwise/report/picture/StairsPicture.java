package org.sagwise.report.picture;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Locale;
import org.sagwise.assessment.Assessment;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Align;
import org.sagwise.picture.pen.Pen;
import org.sagwise.picture.stairs.StairScene;
import org.sagwise.picture.stairs.StaircasePainter;
import org.sagwise.text.Texts;

/** Writes the staircases of two benches, one above the other, on one scale of volts. */
public final class StairsPicture implements Sheet {

    private static final double USUAL_WIDTH = 1000;
    private static final double EDGE = 20;
    private static final double HEAD = 44;

    private final List<Assessment> benches;
    private final Locale locale;
    private final Theme theme;
    private final double spanV;
    private final double width;
    private final double height;
    private final double zoom;

    private StairsPicture(List<Assessment> benches, Locale locale, Theme theme, PictureSize size) {
        this.benches = benches;
        this.locale = locale;
        this.theme = theme;
        this.spanV = benches.stream().mapToDouble(it -> scene(it).spanV()).max().orElse(0);
        this.zoom = size.width() / USUAL_WIDTH;
        this.width = size.width() / zoom;
        this.height = size.height() / zoom;
    }

    /**
     * Writes the picture. The stream is not closed.
     *
     * @throws IOException if the stream cannot be written to
     */
    public static void write(
            Assessment first,
            Assessment second,
            PictureFormat format,
            Locale locale,
            Theme theme,
            PictureSize size,
            OutputStream out)
            throws IOException {
        StairsPicture sheet = new StairsPicture(List.of(first, second), locale, theme, size);
        String title = first.scenario().title() + " / " + second.scenario().title();
        BenchPicture.write(sheet, title, format, locale, size, out);
    }

    @Override
    public void paint(Pen surface) {
        ThemedPen pen = new ThemedPen(surface, theme, 1);
        pen.scaled(zoom, 0, 0, () -> page(surface, pen));
    }

    private void page(Pen surface, ThemedPen pen) {
        pen.fill(new Box(0, 0, width, height), Tone.PAPER);
        NoticeFoot notice = NoticeFoot.of(locale, width - 2 * EDGE);
        double foot = notice.high();
        double each = (height - foot) / benches.size();
        for (int i = 0; i < benches.size(); i++) {
            bench(surface, pen, i, i * each, each);
        }
        notice.paint(pen, EDGE, width - EDGE, height - foot, 8);
    }

    private void bench(Pen surface, ThemedPen pen, int place, double top, double benchHeight) {
        Assessment bench = benches.get(place);
        Texts texts = Texts.in("picture", locale);
        String title = bench.scenario().title();
        String state = texts.say(bench.readings().fired() ? "page.held" : "page.let-go");
        double room = width - 3 * EDGE - TextStyle.PLAIN.width(state, 1);
        pen.textWithin(
                texts.say(
                        place == 0 ? "page.first" : "page.second",
                        title.isBlank() ? texts.say("page.untitled") : title),
                EDGE,
                top + 32,
                room,
                TextStyle.HEADLINE,
                Tone.INK,
                Align.LEFT);
        pen.text(state, width - EDGE, top + 31, TextStyle.PLAIN, Tone.MUTED, Align.RIGHT);
        StaircasePainter stairs = StaircasePainter.of(scene(bench).spanning(spanV), width, benchHeight - HEAD - 8);
        pen.within(0, top + HEAD, 0, () -> stairs.paint(surface));
    }

    private StairScene scene(Assessment bench) {
        return StairScene.of(bench, theme, locale);
    }
}
