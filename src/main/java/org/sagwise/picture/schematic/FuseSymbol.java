package org.sagwise.picture.schematic;

import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.reading.PartReading;

/**
 * A fuse: a rectangle with the wire running straight through (BBC Bitesize, Circuit symbols); the
 * wire of a blown one is parted.
 */
final class FuseSymbol implements Symbol {

    @Override
    public void paint(SymbolPen pen, BenchScene scene, PartBox box) {
        pen.box(36, 13);
        boolean blown = scene.readings()
                .part(box.id())
                .filter(reading -> reading.state() == PartReading.State.BLOWN)
                .isPresent();
        if (blown) {
            pen.line(-60, 0, -10, 0);
            pen.line(10, 0, 60, 0);
        } else {
            pen.line(-60, 0, 60, 0);
        }
    }
}
