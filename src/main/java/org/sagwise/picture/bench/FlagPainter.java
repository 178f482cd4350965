package org.sagwise.picture.bench;

import org.sagwise.hazard.Signal;
import org.sagwise.picture.geometry.GridBox;
import org.sagwise.picture.geometry.Oval;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.layout.LabelSide;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;

/**
 * Plants our flag on parts that a caution speaks of: a pennant with a swallow's tail. How grave it
 * is shows in its form: whole and twofold, whole, half, hollow.
 */
public final class FlagPainter {

    /** Beside a body narrower than this there is no room within it. */
    private static final int NARROW = 60;

    /** So far below a body a flag's pole ends, where figures stand above it. */
    private static final int HANGING = 22;

    private FlagPainter() {}

    static void plant(ThemedPen pen, PartBox box, Signal signal) {
        GridBox body = box.body();
        boolean figuresAbove = box.side() == LabelSide.ABOVE;
        double y = figuresAbove ? body.bottom() + HANGING : body.y() + 4;
        plant(pen, body.right() - 8, y, signal);
    }

    /** Plants a flag beside a symbol, where neither its lines nor its figures are. */
    static void plantBySymbol(ThemedPen pen, PartBox box, Signal signal) {
        GridBox body = box.body();
        boolean figuresRight = box.side() == LabelSide.RIGHT;
        boolean narrow = body.width() < NARROW;
        double left = body.x() + (narrow ? -26 : 6);
        double x = figuresRight && body.height() > body.width() ? left : body.right() - 6;
        boolean lying = body.width() > body.height();
        double above = lying ? Math.min(body.y() + 30, box.y() - 14) : body.y() + 30;
        boolean below = box.side() == LabelSide.ABOVE;
        plant(pen, x, below ? Math.max(above, body.bottom() - 4) : above, signal);
    }

    private static void plant(ThemedPen pen, double x, double y, Signal signal) {
        pen.line(x, y + 8, x, y - 28, Tone.FELT, 6);
        paint(pen, x, y - 27, signal);
        pen.line(x, y + 8, x, y - 28, Tone.INK, 2.4);
        pen.fill(Oval.circle(x, y + 8, 3.4), Tone.INK);
    }

    /** The flag without its pole, its upper inner corner at a point, 26 wide and 18 high. */
    public static void paint(ThemedPen pen, double x, double y, Signal signal) {
        Path cloth = cloth(x, y, 26, 18);
        switch (signal) {
            case DANGER -> {
                pen.fill(cloth(x, y + 9, 32, 16), Tone.FLAG);
                pen.draw(cloth(x, y + 9, 32, 16), Tone.FELT, 1.6);
                pen.fill(cloth, Tone.FLAG);
            }
            case WARNING -> pen.fill(cloth, Tone.FLAG);
            case CAUTION -> {
                pen.fill(cloth, Tone.PAPER);
                pen.fill(cloth(x, y, 26, 9), Tone.FLAG);
            }
            case NOTICE -> pen.fill(cloth, Tone.PAPER);
        }
        pen.draw(cloth, Tone.FLAG, 2);
    }

    private static Path cloth(double x, double y, double width, double height) {
        return Path.polygon(x, y, x + width, y, x + 0.68 * width, y + height / 2, x + width, y + height, x, y + height);
    }
}
