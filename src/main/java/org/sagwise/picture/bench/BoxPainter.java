package org.sagwise.picture.bench;

import org.sagwise.part.ChargerSpec;
import org.sagwise.part.PartKind;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Oval;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.layout.Bearing;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.layout.TerminalPoint;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Align;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.Figures;
import org.sagwise.quantity.Unit;

/** A bench supply or a charger: a box with two posts and its setting in plain type. */
final class BoxPainter implements PartPainter {

    @Override
    public void paint(ThemedPen pen, BenchScene scene, PartBox box) {
        double x = box.x();
        double y = box.y();
        box.terminals().forEach(terminal -> post(pen, terminal));
        pen.plate(Box.between(x - 52, y - 48, x + 52, y + 48), 10, Tone.HOUSING, Tone.EDGE, 2);
        pen.plate(Box.between(x - 42, y - 18, x + 42, y + 12), 5, Tone.LEVEL_GROUND, Tone.PAPER_EDGE, 1.4);
        pen.textFit(setting(scene, box), x, y + 4, 78, TextStyle.FIGURE, Tone.INK, Align.MIDDLE);
        if (box.part().kind() == PartKind.CHARGER) {
            arrow(pen, x, y + 30);
        } else {
            pen.shape(Oval.circle(x - 16, y + 30, 9), Tone.METAL, Tone.EDGE, 1.6);
            pen.line(x - 16, y + 30, x - 11, y + 24, Tone.EDGE, 2);
            pen.shape(Oval.circle(x + 16, y + 30, 9), Tone.METAL, Tone.EDGE, 1.6);
            pen.line(x + 16, y + 30, x + 16, y + 22, Tone.EDGE, 2);
        }
        box.terminals().forEach(terminal -> mark(pen, terminal));
    }

    private static String setting(BenchScene scene, PartBox box) {
        Figures figures = Figures.of(scene);
        return box.part().kind() == PartKind.CHARGER
                ? figures.print(scene.bench().spec(box.id(), ChargerSpec.class).limitV(), Unit.VOLT)
                : figures.print(scene.bench().values(box.id()).need("volts"), Unit.VOLT);
    }

    /** Charge goes up into a cell. */
    private static void arrow(ThemedPen pen, double x, double y) {
        pen.draw(Path.line(x - 22, y + 8, x - 22, y - 8, x + 22, y - 8, x + 22, y + 8), Tone.MUTED, 1.6);
        pen.draw(Path.line(x, y + 12, x, y - 4), Tone.CLIMB, 2.6);
        pen.draw(Path.line(x - 6, y + 2, x, y - 4, x + 6, y + 2), Tone.CLIMB, 2.6);
    }

    private static void post(ThemedPen pen, TerminalPoint at) {
        Bearing out = at.out();
        double inX = at.x() - 14.0 * out.dx();
        double inY = at.y() - 14.0 * out.dy();
        pen.line(at.x(), at.y(), inX, inY, Tone.EDGE, 22);
        pen.line(at.x(), at.y(), inX, inY, Tone.METAL, 18);
    }

    private static void mark(ThemedPen pen, TerminalPoint at) {
        double x = at.x() - 26.0 * at.out().dx();
        double y = at.y() - 26.0 * at.out().dy();
        pen.line(x - 6, y, x + 6, y, Tone.INK, 2.4);
        if (at.ref().terminal().equals("+")) {
            pen.line(x, y - 6, x, y + 6, Tone.INK, 2.4);
        }
    }
}
