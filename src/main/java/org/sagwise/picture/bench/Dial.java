package org.sagwise.picture.bench;

import java.awt.geom.Point2D;
import java.util.Map;
import java.util.function.Function;
import org.sagwise.part.MeterMode;
import org.sagwise.picture.look.Align;
import org.sagwise.picture.look.Pen;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.Tone;

/** The knob of a meter, and around it the letters of what it can be turned to. */
final class Dial {

    private static final Map<MeterMode, String> LETTERS =
            Map.of(MeterMode.VOLTS, "V", MeterMode.AMPS, "A", MeterMode.OHMS, "Ω");

    private static final double RADIUS = 12;

    private Dial() {}

    /**
     * Paints a dial.
     *
     * @param places where the letters stand
     * @param chosen what it is turned to
     * @param modes what it can be turned to
     */
    static void paint(
            Pen pen,
            double scale,
            Point2D knob,
            Function<MeterMode, Point2D> places,
            MeterMode chosen,
            MeterMode... modes) {
        for (MeterMode mode : modes) {
            Point2D place = places.apply(mode);
            pen.text(
                    LETTERS.get(mode),
                    place.getX(),
                    place.getY() + 5 * scale,
                    TextStyle.NAME,
                    mode == chosen ? Tone.INK : Tone.MUTED,
                    Align.MIDDLE);
        }
        pen.shape(Shapes.disc(knob.getX(), knob.getY(), RADIUS * scale), Tone.METAL, Tone.EDGE, 1.8);
        Point2D to = places.apply(chosen);
        double far = Math.max(1, knob.distance(to));
        double reach = (RADIUS - 2) * scale / far;
        pen.line(
                knob.getX(),
                knob.getY(),
                knob.getX() + reach * (to.getX() - knob.getX()),
                knob.getY() + reach * (to.getY() - knob.getY()),
                Tone.EDGE,
                3.4 * scale);
    }
}
