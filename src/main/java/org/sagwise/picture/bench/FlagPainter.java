package org.sagwise.picture.bench;

import org.sagwise.hazard.Signal;
import org.sagwise.picture.geometry.Oval;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;

/**
 * Plants our flag on parts that a caution speaks of: a pennant with a swallow's tail. How grave it
 * is shows in its form: whole and twofold, whole, half, hollow.
 */
public final class FlagPainter {

    private FlagPainter() {}

    static void plant(ThemedPen pen, FlagPlaces.Place place) {
        double x = place.x();
        double y = place.y();
        pen.line(x, y + 8, x, y - 28, Tone.FELT, 6);
        paint(pen, x, y - 27, place.toRight() ? 1 : -1, place.signal());
        pen.line(x, y + 8, x, y - 28, Tone.INK, 2.4);
        pen.fill(Oval.circle(x, y + 8, 3.4), Tone.INK);
    }

    /** The flag without its pole, its upper inner corner at a point, 26 wide and 18 high. */
    public static void paint(ThemedPen pen, double x, double y, Signal signal) {
        paint(pen, x, y, 1, signal);
    }

    private static void paint(ThemedPen pen, double x, double y, int way, Signal signal) {
        Path cloth = cloth(x, y, way * 26, 18);
        switch (signal) {
            case DANGER -> {
                pen.fill(cloth(x, y + 9, way * 32, 16), Tone.FLAG);
                pen.draw(cloth(x, y + 9, way * 32, 16), Tone.FELT, 1.6);
                pen.fill(cloth, Tone.FLAG);
            }
            case WARNING -> pen.fill(cloth, Tone.FLAG);
            case CAUTION -> {
                pen.fill(cloth, Tone.PAPER);
                pen.fill(cloth(x, y, way * 26, 9), Tone.FLAG);
            }
            case NOTICE -> pen.fill(cloth, Tone.PAPER);
        }
        pen.draw(cloth, Tone.FLAG, 2);
    }

    private static Path cloth(double x, double y, double width, double height) {
        return Path.polygon(x, y, x + width, y, x + 0.68 * width, y + height / 2, x + width, y + height, x, y + height);
    }
}
