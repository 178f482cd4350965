package org.sagwise.picture.stairs;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.sagwise.part.PartKind;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Line;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Align;
import org.sagwise.picture.pen.Pen;
import org.sagwise.reading.Staircase;
import org.sagwise.reading.Staircase.Step;

/**
 * Paints a staircase in a size: potential as height, the way of the current from left to right, and
 * beside it, where there is room, a lens on the small steps.
 */
public final class StaircasePainter {

    private static final double LEAST_WIDTH_FOR_LENS = 560;
    private static final double LENS_SHARE = 0.44;
    private static final double MARGIN = 16;

    /** Room for words over the highest step. */
    static final double HEADROOM = 20;

    /** Width below which steps of lanes cannot be told apart, and how many are drawn however narrow. */
    private static final double LANE = 36;

    private static final double LEAST_LANES = 4;

    /** Less flows through nothing that works, A. */
    private static final double NO_CURRENT_A = 1e-3;

    /** Steps lower than this, in pixels, are named in the lens alone. */
    private static final double LEAST_BESIDE_LENS = 5;

    private final StairScene scene;
    private final double width;
    private final double height;
    private final StairOrder order;
    private final StairWords words;
    private final StairAxis axis;
    private final StairPlan plan;
    private final Optional<LossLens> lens;
    private final int hidden;

    private StaircasePainter(StairScene scene, double width, double height) {
        this.scene = scene;
        this.width = width;
        this.height = height;
        this.order = StairOrder.of(scene.staircase());
        this.words = new StairWords(scene);
        this.axis = axis(scene, order, head() + HEADROOM * scene.textScale(), height - 12);
        this.lens = lens();
        double right = lens.isPresent() ? lensLeft() - 10 : width - MARGIN;
        double left = MARGIN + 36 * scene.textScale();
        StairOrder drawn = order.showing((int) Math.max(LEAST_LANES, (right - left) / LANE), scene.scenario());
        this.hidden = order.lanes().size() - drawn.lanes().size();
        this.plan = StairPlan.of(Course.of(drawn), left, right, axis);
    }

    /** The lens, if there is room for one and it enlarges anything. */
    private Optional<LossLens> lens() {
        boolean room = width >= LEAST_WIDTH_FOR_LENS && axis.bottom() - axis.top() >= 80;
        List<Step> way = order.lossiestWay();
        if (!room || !Losses.canBeSeen(way)) {
            return Optional.empty();
        }
        Box card = new Box(lensLeft(), 10, width - lensLeft() - 12, height - 20);
        int most = LossLens.columns(card.width(), scene.textScale()) - 1;
        return Losses.of(way, most)
                .map(losses -> new LossLens(losses, card, axis.perVolt(), words, scene))
                .filter(LossLens::isWorthwhile);
    }

    private double lensLeft() {
        return width * (1 - LENS_SHARE);
    }

    /** A painter for a scene in a size, pixels. */
    public static StaircasePainter of(StairScene scene, double width, double height) {
        return new StaircasePainter(scene, width, height);
    }

    private double head() {
        return 12 + TextStyle.NAME.lineHeight(scene.textScale());
    }

    /** A staircase that gives itself more room than its steps need shares a scale with another. */
    private static StairAxis axis(StairScene scene, StairOrder order, double top, double bottom) {
        double zero = order.steps().isEmpty() ? 0 : order.steps().get(0).fromV();
        double low = order.lowestV();
        double given = low + scene.staircase().highestV() - scene.staircase().lowestV();
        double high = Math.max(Math.max(order.highestV(), given), low + 0.1);
        return new StairAxis(zero, low, high, top, bottom);
    }

    /** The step under a point, on the stairs or in the lens; for what is pointed at. */
    public Optional<Step> stepAt(double x, double y) {
        Optional<Step> inLens = lens.flatMap(seen -> seen.stepAt(x, y));
        return inLens.isPresent()
                ? inLens
                : plan.columns().stream()
                        .filter(column -> x >= column.left() && x < column.right())
                        .filter(column -> y >= 0 && y <= height)
                        .map(Column::step)
                        .findFirst();
    }

    /** Whether something could be climbed: if nothing is, the circuit contradicts itself. */
    private boolean hasSource() {
        return Stream.of(PartKind.CELL, PartKind.SUPPLY)
                .anyMatch(kind -> !scene.scenario().partsOf(kind).isEmpty());
    }

    private String emptyKey() {
        if (scene.hush() == StairScene.Hush.ASKED) {
            return "stairs.asked";
        }
        return hasSource() ? "stairs.contradiction" : "stairs.empty";
    }

    /** Paints over the whole of a surface of this size. */
    public void paint(Pen surface) {
        ThemedPen pen = new ThemedPen(surface, scene.theme(), scene.textScale(), 1, scene.lineScale());
        pen.fill(new Box(0, 0, width, height), Tone.PAPER);
        title(pen);
        if (plan.columns().isEmpty()) {
            StairInk.sentence(
                    pen,
                    words.say(emptyKey()),
                    width / 2,
                    height / 2,
                    width - 2 * MARGIN,
                    12 + TextStyle.NAME.lineHeight(scene.textScale()));
            return;
        }
        for (Box panel : plan.panels()) {
            pen.plate(panel, 6, Tone.LEVEL_GROUND, Tone.PAPER_EDGE, 0.8);
        }
        double left = plan.columns().get(0).left();
        double right = plan.columns().get(plan.columns().size() - 1).right();
        AxisPainter.paint(pen, axis, left, right, words);
        for (Column column : plan.columns()) {
            boolean backward =
                    StairOrder.isSource(column.step().kind()) && column.step().riseV() < 0;
            boolean stopped = column.step().kind() == Staircase.Kind.BOARD
                    && Math.abs(column.step().currentA()) < NO_CURRENT_A;
            StairInk.block(pen, column.block(axis), column.step().kind(), backward, stopped);
        }
        bridges(pen);
        trace(pen);
        emphasis(pen);
        double least = lens.isPresent() ? LEAST_BESIDE_LENS : 0;
        StairLabels labels = new StairLabels(pen, axis, words, labelRoom(), plan.panels(), least);
        plan.bridges().forEach(labels::keepOff);
        labels.write(plan.columns());
        lens.ifPresent(seen -> seen.paint(pen));
    }

    private Box labelRoom() {
        double top = head() - 6;
        List<Column> columns = plan.columns();
        double left = columns.get(0).left() - 4;
        double right = columns.get(columns.size() - 1).right() + 6;
        return new Box(left, top, right - left, axis.bottom() + 2 - top);
    }

    private void title(ThemedPen pen) {
        String title = words.say("stairs.title");
        double y = 8 + 0.82 * TextStyle.NAME.lineHeight(scene.textScale());
        pen.text(title, MARGIN, y, TextStyle.NAME, Tone.INK, Align.LEFT);
        double x = MARGIN + TextStyle.NAME.width(title, scene.textScale()) + 10;
        double room = (lens.isPresent() ? lensLeft() : width) - x - 10;
        if (hidden > 0) {
            pen.textWithin(leftOut(), x, y, room, TextStyle.SMALL, Tone.MUTED, Align.LEFT);
            return;
        }
        String hint = words.say("stairs.hint");
        if (TextStyle.SMALL.width(hint, scene.textScale()) <= room) {
            pen.text(hint, x, y, TextStyle.SMALL, Tone.MUTED, Align.LEFT);
        }
    }

    /** How many cells are drawn of those on the bench; where all are, how many ways are not. */
    private String leftOut() {
        long drawn = plan.columns().stream()
                .map(Column::step)
                .filter(step -> step.kind() == Staircase.Kind.CELL)
                .map(Step::part)
                .distinct()
                .count();
        int cells = scene.scenario().partsOf(PartKind.CELL).size();
        return drawn < cells ? words.say("stairs.some-cells", drawn, cells) : words.say("stairs.more", hidden);
    }

    private void bridges(ThemedPen pen) {
        double left = plan.columns().get(0).left();
        for (StairPlan.Bridge bridge : plan.bridges()) {
            double y = axis.y(bridge.potentialV());
            pen.drawDashed(new Line(Math.max(left, bridge.from()), y, bridge.to(), y), Tone.INK, 1.6, 2, 4);
        }
    }

    /** The line of the potential: it rises before a step up and falls behind a step down. */
    private void trace(ThemedPen pen) {
        Path.Builder line = new Path.Builder();
        Column before = null;
        for (Column column : plan.columns()) {
            Step step = column.step();
            double fromY = axis.y(step.fromV());
            double toY = axis.y(step.toV());
            boolean goesOn = before != null && Math.abs(before.right() - column.left()) < 1e-6;
            if (goesOn) {
                line.lineTo(column.left(), fromY);
            } else {
                line.moveTo(column.left(), fromY);
            }
            boolean up = step.riseV() > 0;
            line.lineTo(up ? column.left() : column.right(), up ? toY : fromY);
            line.lineTo(column.right(), toY);
            before = column;
        }
        pen.draw(line.build(), Tone.INK, 2.4);
    }

    private void emphasis(ThemedPen pen) {
        for (Column column : plan.columns()) {
            if (scene.isEmphasised(column.step())) {
                Box block = column.block(axis);
                pen.draw(new Box(block.x() - 1, block.y() - 3, block.width() + 2, block.height() + 6), Tone.CHOSEN, 3);
            }
        }
    }
}
