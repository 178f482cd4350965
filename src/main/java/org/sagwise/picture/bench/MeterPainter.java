package org.sagwise.picture.bench;

import org.sagwise.part.MeterMode;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.layout.TerminalPoint;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Align;
import org.sagwise.picture.scene.BenchScene;

/** A multimeter: its reading in plain type, and a knob that points to what it counts. */
final class MeterPainter implements PartPainter {

    @Override
    public void paint(ThemedPen pen, BenchScene scene, PartBox box) {
        double x = box.x();
        double y = box.y();
        MeterMode turned = box.part().meterMode().orElseThrow();
        box.terminals().forEach(terminal -> jack(pen, terminal));
        pen.plate(Box.between(x - 58, y - 58, x + 58, y + 54), 14, Tone.HOUSING, Tone.EDGE, 2);
        pen.plate(Box.between(x - 46, y - 46, x + 46, y - 10), 6, Tone.LEVEL_GROUND, Tone.PAPER_EDGE, 1.4);
        pen.textFit(PanelFigure.of(scene, box.part()), x, y - 21, 86, TextStyle.FIGURE, Tone.INK, Align.MIDDLE);
        Dial.paint(pen, 1, new Point(x, y + 32), mode -> letter(x, y + 32, mode), turned, MeterMode.values());
    }

    private static Point letter(double x, double y, MeterMode mode) {
        return new Point(x + 34 * (mode.ordinal() - 1), y - (mode == MeterMode.AMPS ? 25 : 5));
    }

    private static void jack(ThemedPen pen, TerminalPoint at) {
        boolean red = at.ref().terminal().equals("red");
        double inX = at.x() - 14.0 * at.out().dx();
        double inY = at.y() - 14.0 * at.out().dy();
        pen.line(at.x(), at.y(), inX, inY, Tone.EDGE, 19);
        pen.line(at.x(), at.y(), inX, inY, red ? Tone.PROBE_RED : Tone.PROBE_BLACK, 15);
    }
}
