package org.sagwise.picture.schematic;

import java.util.Map;
import org.sagwise.part.MeterMode;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.scene.BenchScene;

/** A meter: a circle with V, A or Ω (BBC Bitesize, Circuit symbols), its red side marked. */
final class MeterSymbol implements Symbol {

    private static final Map<MeterMode, String> LETTERS =
            Map.of(MeterMode.VOLTS, "V", MeterMode.AMPS, "A", MeterMode.OHMS, "Ω");

    @Override
    public void paint(SymbolPen pen, BenchScene scene, PartBox box) {
        MeterMode mode = box.part().meterMode().orElseThrow();
        pen.line(-60, 0, -28, 0);
        pen.line(28, 0, 60, 0);
        pen.circle(0, 0, 28);
        pen.plus(-44, -14);
        pen.letters(LETTERS.get(mode), 0, 0, 40, TextStyle.HEADLINE);
    }
}
