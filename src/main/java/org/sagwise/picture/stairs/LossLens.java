package org.sagwise.picture.stairs;

import java.util.List;
import java.util.Optional;
import org.sagwise.part.PartKind;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.geometry.Round;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Align;
import org.sagwise.quantity.Digits;
import org.sagwise.reading.Staircase.Kind;
import org.sagwise.reading.Staircase.Step;

/**
 * A lens on the top of the stairs: losses one after the other on a scale of their own, from the sum
 * of the rest voltages down to what is left. The scale does not reach down to zero, and a break in
 * axis and block says so.
 */
final class LossLens {

    private static final double AXIS = 58;
    private static final double PAD = 12;
    private static final double COLUMN = 74;
    private static final double LEAST_TIMES = 1.5;

    private final Losses losses;
    private final Box card;
    private final double outsidePerVolt;
    private final StairWords words;
    private final StairScene scene;
    private final double scale;

    LossLens(Losses losses, Box card, double outsidePerVolt, StairWords words, StairScene scene) {
        this.losses = losses;
        this.card = card;
        this.outsidePerVolt = outsidePerVolt;
        this.words = words;
        this.scene = scene;
        this.scale = scene.textScale();
    }

    /** How many columns of words fit into a lens of a width. */
    static int columns(double width, double scale) {
        return (int) ((width - PAD - AXIS * scale) / (COLUMN * scale));
    }

    /** Whether it enlarges what it shows; with nothing to show it says how to get something. */
    boolean isWorthwhile() {
        return losses.entries().isEmpty() || times() >= LEAST_TIMES;
    }

    /** How much higher a volt stands in the lens than outside. */
    double times() {
        return axis().perVolt() / outsidePerVolt;
    }

    private StairAxis axis() {
        double line = TextStyle.SMALL.lineHeight(scale);
        double top = card.y() + 1.2 * TextStyle.NAME.lineHeight(scale) + 10;
        double bottom = card.bottom() - 2 * line - 26;
        return new StairAxis(0, losses.leftV(), losses.restV(), top, bottom);
    }

    private double left() {
        return card.x() + AXIS * scale;
    }

    private double columnWidth() {
        return (card.right() - PAD - left()) / (losses.entries().size() + 1);
    }

    Optional<Step> stepAt(double x, double y) {
        if (!card.contains(x, y)) {
            return Optional.empty();
        }
        int column = (int) Math.floor((x - left()) / columnWidth());
        return column >= 0 && column < losses.entries().size()
                ? Optional.of(losses.entries().get(column).steps().get(0))
                : Optional.empty();
    }

    /** Nothing is lost: because nothing flows, or because nothing takes anything away. */
    private void idle(ThemedPen pen) {
        StairInk.sentence(
                pen,
                words.say(idleKey()),
                card.middleX(),
                card.middleY() + 5 * scale,
                card.width() - 2 * PAD,
                card.y());
    }

    private String idleKey() {
        List<Step> gaps = scene.staircase().steps().stream()
                .filter(step -> step.kind() == Kind.GAP)
                .toList();
        if (gaps.isEmpty()) {
            return "stairs.lens-none";
        }
        return gaps.stream().allMatch(this::isButton) ? "stairs.lens-idle" : "stairs.lens-open";
    }

    private boolean isButton(Step gap) {
        return scene.scenario()
                .part(gap.part())
                .filter(part -> part.kind() == PartKind.SWITCH && !part.keys().has("stuck"))
                .isPresent();
    }

    void paint(ThemedPen pen) {
        StairAxis axis = axis();
        pen.shape(new Round(card, 10), Tone.LEVEL_GROUND, Tone.PAPER_EDGE, 1.4);
        if (losses.entries().isEmpty()) {
            idle(pen);
            return;
        }
        double base = card.y() + 4 + 0.9 * TextStyle.NAME.lineHeight(scale);
        pen.textWithin(
                words.say("stairs.lens", words.figures().numbers().number(times(), Digits.significant(2))),
                card.x() + PAD,
                base,
                card.width() - 2 * PAD,
                TextStyle.SMALL_BOLD,
                Tone.INK,
                Align.LEFT);
        AxisPainter.paint(pen, axis, left(), card.right() - PAD, words);
        axisBreak(pen, axis);
        double x = left();
        double width = columnWidth();
        double level = losses.restV();
        Path.Builder line = new Path.Builder();
        line.moveTo(x, axis.y(level));
        for (Losses.Entry entry : losses.entries()) {
            entry(pen, axis, entry, x, level);
            line.lineTo(x + width, axis.y(level));
            level -= entry.lossV();
            line.lineTo(x + width, axis.y(level));
            x += width;
        }
        load(pen, axis, x, width);
        line.lineTo(x + width, axis.y(level));
        pen.draw(line.build(), Tone.INK, 2.4);
    }

    private void entry(ThemedPen pen, StairAxis axis, Losses.Entry entry, double x, double level) {
        double width = columnWidth();
        double top = axis.y(Math.max(level, level - entry.lossV()));
        double bottom = axis.y(Math.min(level, level - entry.lossV()));
        Box block = new Box(x, top, width, bottom - top);
        StairInk.block(pen, block, entry.kind(), false);
        if (entry.steps().stream().anyMatch(scene::isEmphasised)) {
            pen.draw(block, Tone.CHOSEN, 3);
        }
        words(pen, words.name(entry), words.volts(entry.lossV()), x, width, StairInk.ink(entry.kind()));
    }

    private void words(ThemedPen pen, String name, String volts, double x, double width, Tone tone) {
        double line = TextStyle.SMALL.lineHeight(scale);
        double y = card.bottom() - line - 0.45 * line;
        double middle = x + width / 2;
        pen.textWithin(name, middle, y, width - 4, TextStyle.SMALL, tone, Align.MIDDLE);
        pen.textWithin(volts, middle, y + line, width - 2, TextStyle.SMALL_BOLD, tone, Align.MIDDLE);
    }

    /** What is left: its top alone, broken off above zero. */
    private void load(ThemedPen pen, StairAxis axis, double x, double width) {
        double top = axis.y(losses.leftV());
        double bottom = top + 18;
        Path.Builder block = new Path.Builder();
        block.moveTo(x, top);
        block.lineTo(x + width, top);
        block.lineTo(x + width, bottom);
        int teeth = 5;
        for (int i = teeth * 2 - 1; i >= 0; i--) {
            block.lineTo(x + width * i / (2.0 * teeth), bottom - (i % 2 == 0 ? 0 : 6));
        }
        block.close();
        pen.fill(block.build(), Tone.LOAD_GROUND);
        words(pen, words.say("stairs.left"), words.volts(losses.leftV()), x, width, Tone.LOAD);
    }

    /** The break of the axis below its lowest volts. */
    private void axisBreak(ThemedPen pen, StairAxis axis) {
        double left = left();
        double bottom = axis.bottom();
        double x = left - 4;
        double[] broken = {
            x, axis.top(), x, bottom + 6, x - 4, bottom + 9, left, bottom + 13, x, bottom + 16, x, bottom + 20
        };
        pen.draw(Path.line(broken), Tone.MUTED, 1.4);
    }
}
