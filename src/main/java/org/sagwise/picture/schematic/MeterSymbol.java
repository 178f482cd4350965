package org.sagwise.picture.schematic;

import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.scene.BenchScene;

/** A meter: a circle with V or A (BBC Bitesize, Circuit symbols), its red side marked. */
final class MeterSymbol implements Symbol {

    @Override
    public void paint(SymbolPen pen, BenchScene scene, PartBox box) {
        boolean amps = box.part().wordOrDefault("mode").orElse("volts").equals("amps");
        pen.line(-60, 0, -28, 0);
        pen.line(28, 0, 60, 0);
        pen.circle(0, 0, 28);
        pen.plus(-44, -14);
        pen.letters(amps ? "A" : "V", 0, 0, 40, TextStyle.HEADLINE);
    }
}
