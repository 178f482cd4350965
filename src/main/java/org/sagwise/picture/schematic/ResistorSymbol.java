package org.sagwise.picture.schematic;

import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.scene.BenchScene;

/** A resistor: a rectangle with a wire out of each end (BBC Bitesize, Circuit symbols). */
final class ResistorSymbol implements Symbol {

    @Override
    public void paint(SymbolPen pen, BenchScene scene, PartBox box) {
        pen.line(0, -60, 0, -40);
        pen.line(0, 40, 0, 60);
        pen.box(14, 40);
    }
}
