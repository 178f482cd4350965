package org.sagwise.picture.bench;

import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.scene.BenchScene;

/** A resistor as a block of ceramic, the way of its wire scratched on it. */
final class ResistorPainter implements PartPainter {

    @Override
    public void paint(ThemedPen pen, BenchScene scene, PartBox box) {
        pen.within(box.x(), box.y(), box.quarters(), () -> block(pen));
    }

    private static void block(ThemedPen pen) {
        pen.plate(Box.between(-6, -60, 6, 60), 3, Tone.METAL, Tone.EDGE, 1.8);
        pen.plate(Box.between(-20, -46, 20, 46), 6, Tone.CERAMIC, Tone.EDGE, 2);
        pen.draw(
                Path.line(0, -38, 0, -28, 10, -23, -10, -13, 10, -3, -10, 7, 10, 17, -10, 25, 0, 30, 0, 38),
                Tone.METAL_DARK,
                2);
    }
}
