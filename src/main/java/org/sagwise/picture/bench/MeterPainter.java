package org.sagwise.picture.bench;

import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.layout.TerminalPoint;
import org.sagwise.picture.look.Align;
import org.sagwise.picture.look.Pen;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.Figures;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.PartReading;

/** A multimeter: its reading in plain type, and a knob that points to volts or amps. */
final class MeterPainter implements PartPainter {

    @Override
    public void paint(Pen pen, BenchScene scene, PartBox box) {
        double x = box.x();
        double y = box.y();
        boolean amps = box.part().wordOrDefault("mode").orElse("volts").equals("amps");
        box.terminals().forEach(terminal -> jack(pen, terminal));
        pen.plate(Shapes.box(x - 58, y - 58, x + 58, y + 54), 14, Tone.HOUSING, Tone.EDGE, 2);
        pen.plate(
                Shapes.box(x - 46, y - 46, x + 46, y - 10),
                6,
                Tone.LEVEL_GROUND,
                Tone.PAPER_EDGE,
                1.4);
        pen.textFit(
                reading(scene, box, amps), x, y - 21, 86, TextStyle.FIGURE, Tone.INK, Align.MIDDLE);
        knob(pen, x, y + 20, amps);
    }

    private static String reading(BenchScene scene, PartBox box, boolean amps) {
        Figures figures = Figures.of(scene);
        return scene.readings()
                .part(box.id())
                .map(part -> value(figures, part, amps))
                .orElse(figures.print(Double.NaN, Unit.VOLT));
    }

    private static String value(Figures figures, PartReading part, boolean amps) {
        return amps
                ? figures.print(part.currentA(), Unit.AMPERE)
                : figures.print(part.voltsV(), Unit.VOLT);
    }

    private static void knob(Pen pen, double x, double y, boolean amps) {
        pen.text("V", x - 30, y + 5, TextStyle.NAME, amps ? Tone.MUTED : Tone.INK, Align.MIDDLE);
        pen.text("A", x + 30, y + 5, TextStyle.NAME, amps ? Tone.INK : Tone.MUTED, Align.MIDDLE);
        pen.shape(Shapes.disc(x, y, 15), Tone.METAL, Tone.EDGE, 1.8);
        pen.line(x, y, x + (amps ? 12 : -12), y, Tone.EDGE, 3.4);
    }

    private static void jack(Pen pen, TerminalPoint at) {
        boolean red = at.ref().terminal().equals("red");
        double inX = at.x() - 14.0 * at.out().dx();
        double inY = at.y() - 14.0 * at.out().dy();
        pen.line(at.x(), at.y(), inX, inY, Tone.EDGE, 19);
        pen.line(at.x(), at.y(), inX, inY, red ? Tone.PROBE_RED : Tone.PROBE_BLACK, 15);
    }
}
