package org.sagwise.picture.bench;

import org.sagwise.part.PtcSpec;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Oval;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.reading.PartReading;

/**
 * A resettable fuse cut open: grains of carbon in plastic between two plates. Cool, they touch and carry the current;
 * hot, the plastic has swollen and they lie apart.
 */
final class PtcPainter implements PartPainter {

    private static final double GRAIN = 4.6;

    /** Middles of the grains of three chains, each a little off the line, while they touch. */
    private static final double[] WAVE = {0, 3, -2, 2, -3, 1, 0};

    @Override
    public void paint(ThemedPen pen, BenchScene scene, PartBox box) {
        double coldOhm = scene.bench().spec(box.id(), PtcSpec.class).ohm();
        boolean tripped = scene.readings()
                .part(box.id())
                .filter(reading -> isTripped(reading, coldOhm))
                .isPresent();
        pen.within(box.x(), box.y(), box.quarters() % 2, () -> body(pen, tripped));
    }

    private static boolean isTripped(PartReading reading, double coldOhm) {
        return Math.abs(reading.voltsV()) > 2 * coldOhm * Math.abs(reading.currentA()) && reading.currentA() != 0;
    }

    private static void body(ThemedPen pen, boolean tripped) {
        leg(pen, -1);
        leg(pen, 1);
        double half = tripped ? 33 : 28;
        pen.plate(Box.between(-38, -half, 38, half), 12, tripped ? Tone.SAG_GROUND : Tone.CERAMIC, Tone.EDGE, 2);
        pen.plate(Box.between(-32, -22, -25, 22), 2, Tone.METAL, Tone.EDGE, 1.6);
        pen.plate(Box.between(25, -22, 32, 22), 2, Tone.METAL, Tone.EDGE, 1.6);
        for (int row = -1; row <= 1; row++) {
            for (int i = 0; i < WAVE.length; i += tripped ? 2 : 1) {
                double x = (i - 3) * 7;
                double y = row * 13 + WAVE[i] * (tripped ? 1.6 : 1);
                pen.fill(Oval.circle(x, y, tripped ? GRAIN - 1 : GRAIN), Tone.EDGE);
            }
        }
    }

    private static void leg(ThemedPen pen, int side) {
        Path wire = Path.line(side * 60, 0, side * 30, 0);
        pen.draw(wire, Tone.EDGE, 9);
        pen.draw(wire, Tone.METAL, 5.5);
        pen.plate(Box.between(side > 0 ? 50 : -60, -10, side > 0 ? 60 : -50, 10), 3, Tone.METAL, Tone.EDGE, 1.6);
    }
}
