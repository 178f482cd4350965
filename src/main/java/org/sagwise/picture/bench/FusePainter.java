package org.sagwise.picture.bench;

import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Oval;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.reading.PartReading;

/** A fuse in a glass tube, its wire whole or melted. */
final class FusePainter implements PartPainter {

    @Override
    public void paint(ThemedPen pen, BenchScene scene, PartBox box) {
        boolean blown = scene.readings()
                .part(box.id())
                .map(reading -> reading.state() == PartReading.State.BLOWN)
                .orElse(false);
        pen.within(box.x(), box.y(), box.quarters() % 2, () -> tube(pen, blown));
    }

    private static void tube(ThemedPen pen, boolean blown) {
        pen.plate(Box.between(-46, -15, 46, 15), 6, Tone.HOUSING, Tone.EDGE, 2);
        if (blown) {
            pen.fill(Oval.circle(0, 0, 11), Tone.METAL_DARK);
            pen.draw(Path.line(-36, 0, -18, 0, -12, 5), Tone.EDGE, 2.4);
            pen.draw(Path.line(36, 0, 18, 0, 13, -5), Tone.EDGE, 2.4);
        } else {
            pen.draw(Path.line(-36, 0, -12, 0, -6, -5, 0, 5, 6, -5, 12, 0, 36, 0), Tone.EDGE, 2.4);
        }
        pen.plate(Box.between(-60, -18, -34, 18), 4, Tone.METAL, Tone.EDGE, 2);
        pen.plate(Box.between(34, -18, 60, 18), 4, Tone.METAL, Tone.EDGE, 2);
    }
}
