package org.sagwise.picture.schematic;

import java.util.Optional;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.scene.BenchScene;

/**
 * A diode: a triangle that points the way that it lets through, against a bar (IEC 60617, from
 * memory). A transistor that is steered so as to pass for one is the same in a box.
 */
final class ReverseGuardSymbol implements Symbol {

    @Override
    public void paint(SymbolPen pen, BenchScene scene, PartBox box) {
        if (scene.bench().values(box.id()).word("type").equals(Optional.of("mosfet"))) {
            pen.box(40, 32);
        }
        pen.line(-60, 0, -20, 0);
        pen.line(20, 0, 60, 0);
        pen.line(-20, -20, -20, 20);
        pen.line(-20, -20, 20, 0);
        pen.line(-20, 20, 20, 0);
        pen.line(20, -20, 20, 20);
    }
}
