package org.sagwise.picture.bench;

import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.geometry.Round;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.reading.CellReading;
import org.sagwise.reading.ResolvedCell;

/**
 * A cell in side view: a can with a raised button end, its sleeve, and a window through which one
 * sees how many volts are left.
 */
final class CellPainter implements PartPainter {

    private static final double TOP = -88;
    private static final double BOTTOM = 100;
    private static final double HALF = 40;
    private static final double MARK = 8;

    @Override
    public void paint(ThemedPen pen, BenchScene scene, PartBox box) {
        ResolvedCell cell = scene.bench().cells().get(box.id());
        boolean reversed = scene.isReversed(box);
        pen.within(box.x(), box.y(), box.quarters(), () -> {
            can(pen);
            sleeve(pen, reversed);
            if (cell.spec().guard().isPresent()) {
                guard(pen);
            }
            if (cell.isTorn()) {
                tear(pen);
            }
            scene.readings().cell(box.id()).ifPresent(reading -> window(pen, cell, reading));
        });
        marks(pen, box);
    }

    private static void can(ThemedPen pen) {
        pen.plate(Box.between(-17, -100, 17, -82), 4, Tone.METAL_LIGHT, Tone.EDGE, 2);
        pen.plate(Box.between(-HALF + 2, TOP, HALF - 2, TOP + 26), 9, Tone.METAL, Tone.EDGE, 2);
        pen.plate(Box.between(-HALF + 2, BOTTOM - 26, HALF - 2, BOTTOM), 9, Tone.METAL, Tone.EDGE, 2);
        if (!pen.isCoarse()) {
            pen.fill(Round.between(-26, TOP - 1, 26, TOP + 5, 2), Tone.METAL_LIGHT);
            pen.line(-26, TOP + 5, 26, TOP + 5, Tone.METAL_DARK, 1);
        }
    }

    /** The sleeve; a notch on either side marks a cell that stands the wrong way round. */
    private static void sleeve(ThemedPen pen, boolean reversed) {
        pen.plate(Box.between(-HALF, TOP + 7, HALF, BOTTOM - 7), 7, Tone.WRAP, Tone.EDGE, 2);
        if (!pen.isCoarse()) {
            pen.fill(Round.between(-HALF + 5, TOP + 11, -HALF + 13, BOTTOM - 11, 4), Tone.WRAP_LIGHT);
        }
        if (reversed) {
            notch(pen, -1);
            notch(pen, 1);
        }
    }

    private static void notch(ThemedPen pen, int side) {
        double outer = side * (HALF + 2);
        double inner = side * (HALF - 16);
        pen.fill(Path.polygon(outer, -16, inner, 0, outer, 16), Tone.FELT);
        pen.draw(Path.line(side * HALF, -15, inner, 0, side * HALF, 15), Tone.EDGE, 2);
    }

    /** The small board under a protected cell's minus end. */
    private static void guard(ThemedPen pen) {
        pen.plate(Box.between(-HALF + 4, BOTTOM - 12, HALF - 4, BOTTOM), 2, Tone.LOAD_GROUND, Tone.EDGE, 1.6);
        for (double x : new double[] {-20, 0, 20}) {
            pen.fill(Round.between(x - 5, BOTTOM - 9, x + 5, BOTTOM - 4, 1), Tone.EDGE);
        }
    }

    /** Bare metal where the sleeve is torn. */
    private static void tear(ThemedPen pen) {
        Path hole = Path.polygon(HALF, 18, 30, 22, 34, 28, 22, 33, 27, 40, 20, 47, 29, 50, 25, 58, 35, 57, HALF, 64);
        pen.shape(hole, Tone.METAL_LIGHT, Tone.EDGE, 1.6);
        pen.draw(Path.line(30, 33, 37, 30), Tone.METAL_DARK, 1.2);
        pen.draw(Path.line(27, 43, 37, 39), Tone.METAL_DARK, 1.2);
        pen.draw(Path.line(30, 52, 37, 48), Tone.METAL_DARK, 1.2);
    }

    private static void window(ThemedPen pen, ResolvedCell cell, CellReading reading) {
        LevelWindow window = LevelWindow.of(
                reading.restV(),
                reading.terminalV(),
                cell.spec().restCurve().voltsAt(1),
                cell.spec().cutoffV());
        Box glass = new Box(-17, -54, 34, 118);
        window.paint(pen, glass);
    }

    /** Plus and minus, upright however the cell lies. */
    private static void marks(ThemedPen pen, PartBox box) {
        Point plus = turned(0, -67, box);
        Point minus = turned(0, 79, box);
        cross(pen, plus, true);
        cross(pen, minus, false);
    }

    private static void cross(ThemedPen pen, Point at, boolean upright) {
        pen.line(at.x() - MARK, at.y(), at.x() + MARK, at.y(), Tone.WRAP_INK, 3);
        if (upright) {
            pen.line(at.x(), at.y() - MARK, at.x(), at.y() + MARK, Tone.WRAP_INK, 3);
        }
    }

    private static Point turned(double x, double y, PartBox box) {
        return new Point(x, y).turned(box.quarters()).moved(box.x(), box.y());
    }
}
