package org.sagwise.picture.bench;

import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.reading.PartReading;

/**
 * A thumb button cut open: a bridge under the cap, with its gap in plain sight while it is open.
 */
final class SwitchPainter implements PartPainter {

    private static final double CONTACT_Y = 0;
    private static final double GAP = 14;

    @Override
    public void paint(ThemedPen pen, BenchScene scene, PartBox box) {
        boolean open = scene.readings()
                .part(box.id())
                .map(reading -> reading.state() == PartReading.State.OPEN)
                .orElse(true);
        boolean pressed = scene.readings().fired();
        pen.within(box.x(), box.y(), box.quarters() % 2, () -> button(pen, open, pressed));
    }

    private static void button(ThemedPen pen, boolean open, boolean pressed) {
        double bridge = open ? CONTACT_Y - 8 - GAP : CONTACT_Y - 8;
        double cap = pressed ? -34 : -40;
        pen.plate(Box.between(-22, cap, 22, cap + 16), 7, Tone.BUTTON, Tone.EDGE, 2);
        pen.plate(Box.between(-46, -28, 46, 30), 10, Tone.HOUSING, Tone.EDGE, 2);
        pen.line(0, -27, 0, bridge, Tone.EDGE, 5);
        pen.line(0, -27, 0, bridge, Tone.METAL, 2);
        contact(pen, -1);
        contact(pen, 1);
        pen.plate(Box.between(-32, bridge - 4, 32, bridge + 3), 3, Tone.METAL, Tone.EDGE, 1.8);
        spring(pen, bridge + 3);
    }

    private static void contact(ThemedPen pen, int side) {
        pen.plate(
                Box.between(
                        Math.min(side * 60, side * 18), CONTACT_Y - 5, Math.max(side * 60, side * 18), CONTACT_Y + 5),
                3,
                Tone.METAL,
                Tone.EDGE,
                1.8);
    }

    /** The spring that lifts the bridge. */
    private static void spring(ThemedPen pen, double top) {
        double bottom = 26;
        double turn = (bottom - top) / 5;
        double[] way = new double[12];
        for (int i = 0; i < 6; i++) {
            way[2 * i] = i % 2 == 0 ? -6 : 6;
            way[2 * i + 1] = top + i * turn;
        }
        pen.draw(Path.line(way), Tone.MUTED, 1.6);
    }
}
