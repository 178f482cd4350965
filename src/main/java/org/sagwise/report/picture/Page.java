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

    /** Share of the width that cautions take beside a narrow bench. */
    private static final double BESIDE = 0.36;

    /** A panel that is not so many times as wide as high has no room beside its bench. */
    private static final double BESIDE_FROM = 1.5;

    private static final double MUCH_LARGER = 1.08;

    /** Height of small letters that is read without effort on a screen, pixels: common practice, no source. */
    private static final double READABLE = 11;

    /** Larger words than usual take more room, so that the whole becomes smaller: only for a real gain. */
    private static final double WORTH_IT = 1.04;

    private static final double ADVICE_INDENT = 44;

    private static final double[] TEXT_SCALES = {1, 1.15, 1.3, 1.5, 1.75};

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
        if (standBeside(top, bottom)) {
            double beside = BESIDE * width;
            double high = bottom - top;
            pen.within(0, top, 0, () -> bench(surface, width - beside, high));
            cautionsBeside(pen, new Box(width - beside + EDGE, top + EDGE, beside - 2 * EDGE, high - EDGE));
            pen.line(EDGE, bottom, width - EDGE, bottom, Tone.PAPER_EDGE, 1);
            return;
        }
        bottom -= cautions(pen, bottom);
        double benchHeight = bottom - top;
        pen.within(0, top, 0, () -> bench(surface, width, benchHeight));
    }

    /** Whether cautions stand beside a narrow bench, which then has more height to be seen in. */
    private boolean standBeside(double top, double bottom) {
        if (assessment.cautions().isEmpty() || width < BESIDE_FROM * (bottom - top)) {
            return false;
        }
        double below = bottom - top - cautionsHeight();
        return scale((1 - BESIDE) * width, bottom - top) > MUCH_LARGER * scale(width, below);
    }

    private double scale(double benchWidth, double benchHeight) {
        return LegendPainter.fit(scene(1), benchWidth, benchHeight).scale();
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

    private void bench(Pen surface, double benchWidth, double benchHeight) {
        BenchScene scene = readable(benchWidth, benchHeight);
        BenchView view = LegendPainter.fit(scene, benchWidth, benchHeight);
        StillPainter.paint(surface, scene, view);
        ChevronPainter.paintStill(surface, scene, view);
    }

    /** The bench with its words so large that they can be read in a picture of this size, as far as that helps. */
    private BenchScene readable(double benchWidth, double benchHeight) {
        BenchScene best = null;
        double largest = 0;
        for (double textScale : TEXT_SCALES) {
            BenchScene scene = scene(textScale);
            double pixels = TextStyle.SMALL.size()
                    * textScale
                    * LegendPainter.fit(scene, benchWidth, benchHeight).scale()
                    * zoom;
            if (pixels > largest * WORTH_IT) {
                best = scene;
                largest = pixels;
            }
            if (largest >= READABLE) {
                break;
            }
        }
        return best;
    }

    private BenchScene scene(double textScale) {
        BenchLayout layout = BenchLayout.of(assessment.scenario(), textScale, drawing);
        return BenchScene.of(assessment, layout, theme, locale);
    }

    private void stairs(Pen surface, double stairsHeight) {
        StaircasePainter.of(StairScene.of(assessment, theme, locale), width, stairsHeight)
                .paint(surface);
    }

    /** How much height cautions take under the bench. */
    private double cautionsHeight() {
        int shown = Math.min(MOST_CAUTIONS, assessment.cautions().size());
        boolean more = assessment.cautions().size() > shown;
        return shown == 0 ? 0 : shown * eachCaution() + 14 + (more ? 20 : 0);
    }

    private static double eachCaution() {
        return 2.2 * TextStyle.PLAIN.lineHeight(1) + 8;
    }

    /** Writes cautions upward from a line; how much height they took. */
    private double cautions(ThemedPen pen, double bottom) {
        double taken = cautionsHeight();
        if (taken == 0) {
            return 0;
        }
        double y = bottom - taken + 8;
        List<Caution> all = assessment.cautions();
        for (Caution caution : all.subList(0, Math.min(MOST_CAUTIONS, all.size()))) {
            caution(pen, caution, y);
            y += eachCaution();
        }
        if (all.size() > MOST_CAUTIONS) {
            more(pen, all.size() - MOST_CAUTIONS, EDGE + 46, y + 12);
        }
        pen.line(EDGE, bottom, width - EDGE, bottom, Tone.PAPER_EDGE, 1);
        return taken;
    }

    private void more(ThemedPen pen, int count, double x, double y) {
        pen.text(texts.say("page.more", count), x, y, TextStyle.SMALL, Tone.MUTED, Align.LEFT);
    }

    /** Writes cautions one under the other, their advice in full, as many as there is room for. */
    private void cautionsBeside(ThemedPen pen, Box room) {
        double line = TextStyle.PLAIN.lineHeight(1);
        double y = room.y();
        List<Caution> all = assessment.cautions();
        for (int i = 0; i < all.size(); i++) {
            Caution caution = all.get(i);
            List<String> title =
                    WordWrap.lines(CautionTexts.title(caution, locale), TextStyle.NAME, room.width() - ADVICE_INDENT);
            List<String> advice =
                    WordWrap.lines(CautionTexts.advice(caution, locale), TextStyle.PLAIN, room.width() - ADVICE_INDENT);
            double high = (1 + title.size() + advice.size()) * line + 0.7 * line;
            boolean last = i == all.size() - 1;
            if (i > 0 && y + high + (last ? 0 : line) > room.bottom()) {
                more(pen, all.size() - i, room.x() + ADVICE_INDENT, y + 0.8 * line);
                return;
            }
            FlagPainter.paint(pen, room.x() + 2, y + 4, caution.signal());
            pen.line(room.x() + 2, y + 3, room.x() + 2, y + 32, Tone.INK, 2.2);
            double left = room.x() + ADVICE_INDENT;
            double base = y + 15;
            pen.text(CautionTexts.signal(caution.signal(), locale), left, base, TextStyle.NAME, Tone.FLAG, Align.LEFT);
            for (String text : title) {
                base += line;
                pen.text(text, left, base, TextStyle.NAME, Tone.INK, Align.LEFT);
            }
            for (String text : advice) {
                base += line;
                pen.text(text, left, base, TextStyle.PLAIN, Tone.MUTED, Align.LEFT);
            }
            y += high;
        }
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
        NoticeFoot notice = NoticeFoot.of(locale, width - 2 * EDGE);
        notice.paint(pen, EDGE, width - EDGE, height - notice.high(), 8);
        return notice.high();
    }
}
