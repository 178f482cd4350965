package org.sagwise.picture.schematic;

import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.scene.BenchScene;

/**
 * A bench supply: a source of voltage, drawn as a circle through which the line runs straight (from
 * memory, no source at hand), its positive end marked.
 */
final class SupplySymbol implements Symbol {

    @Override
    public void paint(SymbolPen pen, BenchScene scene, PartBox box) {
        pen.circle(0, 0, 30);
        pen.line(0, -60, 0, 60);
        pen.plus(-18, -42);
    }
}
