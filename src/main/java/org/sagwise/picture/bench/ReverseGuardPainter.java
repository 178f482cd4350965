package org.sagwise.picture.bench;

import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.reading.PartReading;

/**
 * A guard against reversal as a flat body between two tabs, with the way that it lets through printed
 * on it: an arrow against a bar, coloured while it blocks.
 */
final class ReverseGuardPainter implements PartPainter {

    @Override
    public void paint(ThemedPen pen, BenchScene scene, PartBox box) {
        boolean blocks = scene.readings()
                .part(box.id())
                .map(reading -> reading.state() == PartReading.State.BLOCKING)
                .orElse(false);
        pen.within(box.x(), box.y(), box.quarters(), () -> body(pen, blocks ? Tone.FLAG : Tone.INK));
    }

    private static void body(ThemedPen pen, Tone print) {
        pen.plate(Box.between(-60, -7, 60, 7), 3, Tone.METAL, Tone.EDGE, 1.8);
        pen.plate(Box.between(-40, -24, 40, 24), 6, Tone.HOUSING, Tone.EDGE, 2);
        pen.draw(Path.line(-28, 0, 14, 0), print, 3);
        pen.draw(Path.line(2, -11, 14, 0, 2, 11), print, 3);
        pen.draw(Path.line(20, -14, 20, 14), print, 4);
    }
}
