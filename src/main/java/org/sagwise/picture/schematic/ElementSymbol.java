package org.sagwise.picture.schematic;

import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.scene.BenchScene;

/**
 * A coil is a heating element: a rectangle with bars across (from memory, no source at hand). The
 * symbol of a winding would say inductance, which is not what it is there for.
 */
final class ElementSymbol implements Symbol {

    @Override
    public void paint(SymbolPen pen, BenchScene scene, PartBox box) {
        pen.line(0, -60, 0, -42);
        pen.line(0, 42, 0, 60);
        pen.box(16, 42);
        for (int bar = -2; bar <= 2; bar++) {
            pen.line(-16, 14.0 * bar, 16, 14.0 * bar);
        }
    }
}
