package org.sagwise.picture.schematic;

import org.sagwise.part.BoardSpec;
import org.sagwise.part.ChargerSpec;
import org.sagwise.part.PartKind;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.layout.PartShape;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.Figures;
import org.sagwise.quantity.Unit;

/** A regulated board or a charger: a block that says what it is and what it holds steady. */
final class BlockSymbol implements Symbol {

    private static final double INSET = 16;
    private static final double MARK = 12;

    @Override
    public void paint(SymbolPen pen, BenchScene scene, PartBox box) {
        PartShape shape = PartShape.of(box.part().kind(), scene.layout().drawing());
        double halfWidth = shape.halfWidth() - INSET;
        double halfHeight = shape.halfHeight() - (isBoard(box) ? 2 : INSET);
        for (PartShape.Pin pin : shape.pins()) {
            pen.line(
                    pin.dx(),
                    pin.dy(),
                    pin.dx() - INSET * pin.out().dx(),
                    pin.dy() - INSET * pin.out().dy());
        }
        pen.box(halfWidth, halfHeight);
        for (PartShape.Pin pin : shape.pins()) {
            double far = INSET + MARK;
            double x = pin.dx() - far * pin.out().dx();
            double y = pin.dy() - far * pin.out().dy();
            mark(pen, pin.terminal(), x, y);
        }
        Figures figures = Figures.of(scene);
        pen.letters(word(figures, box), 0, -9, 1.7 * halfWidth, TextStyle.SMALL);
        pen.letters(setting(figures, scene, box), 0, 10, 1.5 * halfWidth, TextStyle.NAME);
    }

    private static void mark(SymbolPen pen, String terminal, double x, double y) {
        if (terminal.endsWith("+")) {
            pen.plus(x, y);
        } else {
            pen.thinLine(x - 5, y, x + 5, y);
        }
    }

    private static boolean isBoard(PartBox box) {
        return box.part().kind() == PartKind.BOARD;
    }

    private static String word(Figures figures, PartBox box) {
        return figures.texts().say(isBoard(box) ? "symbol.board" : "symbol.charger");
    }

    private static String setting(Figures figures, BenchScene scene, PartBox box) {
        return isBoard(box)
                ? figures.print(scene.bench().spec(box.id(), BoardSpec.class).powerW(), Unit.WATT)
                : figures.print(scene.bench().spec(box.id(), ChargerSpec.class).limitV(), Unit.VOLT);
    }
}
