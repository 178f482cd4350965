package org.sagwise.picture.schematic;

import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.scene.BenchScene;

/**
 * A resettable fuse: a resistor crossed by the bent line of what depends on something else, with +t for a
 * resistance that grows with temperature (from memory, no source at hand: the thermistor of IEC 60617).
 */
final class PtcSymbol implements Symbol {

    @Override
    public void paint(SymbolPen pen, BenchScene scene, PartBox box) {
        pen.line(-60, 0, -36, 0);
        pen.line(36, 0, 60, 0);
        pen.box(36, 13);
        pen.line(-44, 24, -26, 24);
        pen.line(-26, 24, 26, -24);
        pen.letters("+t", 44, 24, 30, TextStyle.SMALL);
    }
}
