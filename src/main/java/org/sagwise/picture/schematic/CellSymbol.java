package org.sagwise.picture.schematic;

import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.scene.BenchScene;

/**
 * A cell: two plates across the line, the longer one positive, the shorter and thicker one negative
 * (The Open University, An introduction to electronics). What touches its outside meets it at a
 * small circle that hangs, dashed, on the negative side.
 */
final class CellSymbol implements Symbol {

    private static final double PLATE = 7;
    private static final double REACH = 60;
    private static final double CAN_X = 40;
    private static final double CAN_Y = 20;

    @Override
    public void paint(SymbolPen pen, BenchScene scene, PartBox box) {
        pen.line(0, -REACH, 0, -PLATE);
        pen.line(-33, -PLATE, 33, -PLATE);
        pen.bar(-16, PLATE, 16, PLATE);
        pen.line(0, PLATE, 0, REACH);
        pen.plus(-12, -21);
        boolean touched = scene.scenario().links().stream()
                .anyMatch(link -> isCan(box, link.from().toString())
                        || isCan(box, link.to().toString()));
        if (touched) {
            pen.dot(0, CAN_Y, 3.4);
            pen.dashed(0, CAN_Y, CAN_X - 5, CAN_Y);
            pen.circle(CAN_X - 4, CAN_Y, 4);
        }
    }

    private static boolean isCan(PartBox box, String terminal) {
        return terminal.equals(box.id() + ".can");
    }
}
