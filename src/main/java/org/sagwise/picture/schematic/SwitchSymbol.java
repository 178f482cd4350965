package org.sagwise.picture.schematic;

import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.reading.PartReading;

/**
 * A push switch: two contacts and a lever, raised off the second while it is open (The Open
 * University, An introduction to electronics); the bar that pushes the lever, and its dashed link,
 * are from memory, no source at hand. A switch by transistor has a box in that link.
 */
final class SwitchSymbol implements Symbol {

    private static final double CONTACT = 26;
    private static final double SMALL = 4;

    @Override
    public void paint(SymbolPen pen, BenchScene scene, PartBox box) {
        boolean open = scene.readings()
                .part(box.id())
                .map(reading -> reading.state() == PartReading.State.OPEN)
                .orElse(true);
        double tip = open ? -18 : -SMALL;
        double middle = (tip - SMALL) / 2;
        double push = open ? -37 : -28;
        pen.line(-60, 0, -CONTACT, 0);
        pen.line(CONTACT, 0, 60, 0);
        pen.line(-CONTACT, -SMALL, CONTACT, tip);
        pen.circle(-CONTACT, 0, SMALL);
        pen.circle(CONTACT, 0, SMALL);
        pen.dashed(0, push, 0, middle);
        pen.line(-11, push, 11, push);
        pen.line(-11, push, -11, push + 6);
        pen.line(11, push, 11, push + 6);
        if (scene.bench().values(box.id()).word("type").orElse("").equals("mosfet")) {
            pen.dashed(-36, 16, 36, 16);
            pen.dashed(-36, -24, -36, 16);
            pen.dashed(36, -24, 36, 16);
        }
    }
}
