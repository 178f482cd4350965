package org.sagwise.report.picture;

import java.util.List;
import java.util.Locale;
import org.sagwise.assessment.Assessment;
import org.sagwise.assessment.Moment;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.CautionTexts;
import org.sagwise.picture.bench.ChevronPainter;
import org.sagwise.picture.bench.FlagPainter;
import org.sagwise.picture.bench.LegendPainter;
import org.sagwise.picture.bench.StillPainter;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.look.WordWrap;
import org.sagwise.picture.pen.Align;
import org.sagwise.picture.pen.Pen;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.picture.stairs.StairScene;
import org.sagwise.picture.stairs.StaircasePainter;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.text.Texts;

/**
 * A page with all of a bench: title, bench with figures, cautions in short, staircase, and the
 * notice that this is a teaching model. Sized by its smaller side, so that words stay in
 * proportion.
 */
final class Page implements Sheet {

    private static final double USUAL_WIDTH = 1000;
    private static final double EDGE = 20;
    private static final double STAIRS = 0.27;
    private static final int MOST_CAUTIONS = 3;

    private final Moment moment;
    private final Assessment assessment;
    private final Drawing drawing;
    private final Locale locale;
    private final Theme theme;
    private final Texts texts;
    private final double width;
    private final double height;
    private final double zoom;

    Page(Moment moment, Drawing drawing, Locale locale, Theme theme, PictureSize size) {
        this.moment = moment;
        this.assessment = moment.assessment();
        this.drawing = drawing;
        this.locale = locale;
        this.theme = theme;
        this.texts = Texts.in("picture", locale);
        this.zoom = Math.min(size.width() / USUAL_WIDTH, size.height() / (0.66 * USUAL_WIDTH));
        this.width = size.width() / zoom;
        this.height = size.height() / zoom;
    }

    @Override
    public void paint(Pen surface) {
        ThemedPen pen = new ThemedPen(surface, theme, 1);
        pen.scaled(zoom, 0, 0, () -> page(surface, pen));
    }

    private void page(Pen surface, ThemedPen pen) {
        pen.fill(new Box(0, 0, width, height), Tone.PAPER);
        double top = title(pen);
        double bottom = height - notice(pen);
        double stairs = Math.max(150, STAIRS * height);
        bottom -= stairs;
        pen.within(0, bottom, 0, () -> stairs(surface, stairs));
        bottom -= cautions(pen, bottom);
        double benchHeight = bottom - top;
        pen.within(0, top, 0, () -> bench(surface, benchHeight));
    }

    /** Writes the title; how much height it took. */
    private double title(ThemedPen pen) {
        String title = assessment.scenario().title();
        String state = state();
        double right = width - EDGE;
        double room = width - 3 * EDGE - TextStyle.PLAIN.width(state, 1);
        pen.textWithin(
                title.isBlank() ? texts.say("page.untitled") : title,
                EDGE,
                34,
                room,
                TextStyle.TITLE,
                Tone.INK,
                Align.LEFT);
        pen.text(state, right, 33, TextStyle.PLAIN, Tone.MUTED, Align.RIGHT);
        return 50;
    }

    /** In which position of the button, and when if that is not the start. */
    private String state() {
        String button = texts.say(assessment.readings().fired() ? "page.held" : "page.let-go");
        String time = QuantityFormat.forPeople(locale).print(moment.atS(), Unit.SECOND);
        return moment.isStart() ? button : texts.say("page.at", button, time);
    }

    private void bench(Pen surface, double benchHeight) {
        BenchLayout layout = BenchLayout.of(assessment.scenario(), 1, drawing);
        BenchScene scene = BenchScene.of(assessment, layout, theme, locale);
        BenchView view = LegendPainter.fit(scene, width, benchHeight);
        StillPainter.paint(surface, scene, view);
        ChevronPainter.paintStill(surface, scene, view);
    }

    private void stairs(Pen surface, double stairsHeight) {
        StaircasePainter.of(StairScene.of(assessment, theme, locale), width, stairsHeight)
                .paint(surface);
    }

    /** Writes cautions upward from a line; how much height they took. */
    private double cautions(ThemedPen pen, double bottom) {
        List<Caution> all = assessment.cautions();
        if (all.isEmpty()) {
            return 0;
        }
        List<Caution> shown = all.subList(0, Math.min(MOST_CAUTIONS, all.size()));
        double each = 2.2 * TextStyle.PLAIN.lineHeight(1) + 8;
        boolean more = all.size() > shown.size();
        double taken = shown.size() * each + 14 + (more ? 20 : 0);
        double y = bottom - taken + 8;
        for (Caution caution : shown) {
            caution(pen, caution, y);
            y += each;
        }
        if (more) {
            pen.text(
                    texts.say("page.more", all.size() - shown.size()),
                    EDGE + 46,
                    y + 12,
                    TextStyle.SMALL,
                    Tone.MUTED,
                    Align.LEFT);
        }
        pen.line(EDGE, bottom, width - EDGE, bottom, Tone.PAPER_EDGE, 1);
        return taken;
    }

    private void caution(ThemedPen pen, Caution caution, double y) {
        FlagPainter.paint(pen, EDGE + 2, y + 4, caution.signal());
        pen.line(EDGE + 2, y + 3, EDGE + 2, y + 32, Tone.INK, 2.2);
        double left = EDGE + 46;
        double room = width - left - EDGE;
        String word = CautionTexts.signal(caution.signal(), locale);
        pen.text(word, left, y + 15, TextStyle.NAME, Tone.FLAG, Align.LEFT);
        double after = left + TextStyle.NAME.width(word, 1) + 10;
        pen.textWithin(
                CautionTexts.title(caution, locale),
                after,
                y + 15,
                width - EDGE - after,
                TextStyle.NAME,
                Tone.INK,
                Align.LEFT);
        pen.textWithin(
                CautionTexts.advice(caution, locale), left, y + 33, room, TextStyle.PLAIN, Tone.MUTED, Align.LEFT);
    }

    /** Writes the notice along the lower edge; how much height it took. */
    private double notice(ThemedPen pen) {
        List<String> lines =
                WordWrap.lines(Texts.in("notices", locale).say("export.line"), TextStyle.SMALL, width - 2 * EDGE);
        double line = TextStyle.SMALL.lineHeight(1);
        double taken = lines.size() * line + 16;
        double y = height - taken + 8 + 0.8 * line;
        pen.line(EDGE, height - taken, width - EDGE, height - taken, Tone.PAPER_EDGE, 1);
        for (String text : lines) {
            pen.text(text, EDGE, y, TextStyle.SMALL, Tone.INK, Align.LEFT);
            y += line;
        }
        return taken;
    }
}
