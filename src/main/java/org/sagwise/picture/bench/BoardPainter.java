package org.sagwise.picture.bench;

import org.sagwise.part.BoardSpec;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Align;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.Figures;
import org.sagwise.quantity.Unit;
import org.sagwise.text.Texts;

/**
 * A regulated board: a closed box with a funnel on it, wide where volts come in and narrow where
 * watts go out, and the watts that it keeps.
 */
final class BoardPainter implements PartPainter {

    @Override
    public void paint(ThemedPen pen, BenchScene scene, PartBox box) {
        Figures figures = Figures.of(scene);
        Texts texts = figures.texts();
        double x = box.x();
        double y = box.y();
        pen.plate(Box.between(x - 78, y - 58, x + 78, y + 58), 10, Tone.HOUSING, Tone.EDGE, 2);
        for (int side : new int[] {-1, 1}) {
            for (int end : new int[] {-1, 1}) {
                pin(pen, x + side * 74, y + end * 40);
                mark(pen, x + side * 56, y + end * 40, end < 0);
            }
        }
        pen.text(texts.say("board.in"), x - 56, y + 5, TextStyle.SMALL, Tone.MUTED, Align.MIDDLE);
        pen.text(texts.say("board.out"), x + 56, y + 5, TextStyle.SMALL, Tone.MUTED, Align.MIDDLE);
        pen.shape(
                Path.polygon(x - 34, y - 42, x + 34, y - 22, x + 34, y + 22, x - 34, y + 42),
                Tone.LOAD_GROUND,
                Tone.EDGE,
                1.6);
        double watts = scene.bench().spec(box.id(), BoardSpec.class).powerW();
        pen.textFit(figures.print(watts, Unit.WATT), x, y + 6, 64, TextStyle.FIGURE, Tone.INK, Align.MIDDLE);
    }

    private static void pin(ThemedPen pen, double x, double y) {
        pen.plate(Box.between(x - 7, y - 7, x + 7, y + 7), 2, Tone.METAL, Tone.EDGE, 1.6);
    }

    private static void mark(ThemedPen pen, double x, double y, boolean plus) {
        pen.line(x - 4, y, x + 4, y, Tone.INK, 2);
        if (plus) {
            pen.line(x, y - 4, x, y + 4, Tone.INK, 2);
        }
    }
}
