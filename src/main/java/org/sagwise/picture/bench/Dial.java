package org.sagwise.picture.bench;

import java.util.Map;
import java.util.function.Function;
import org.sagwise.part.MeterMode;
import org.sagwise.picture.geometry.Oval;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Align;

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
            ThemedPen pen,
            double scale,
            Point knob,
            Function<MeterMode, Point> places,
            MeterMode chosen,
            MeterMode... modes) {
        for (MeterMode mode : modes) {
            Point place = places.apply(mode);
            pen.text(
                    LETTERS.get(mode),
                    place.x(),
                    place.y() + 5 * scale,
                    TextStyle.NAME,
                    mode == chosen ? Tone.INK : Tone.MUTED,
                    Align.MIDDLE);
        }
        pen.shape(Oval.circle(knob.x(), knob.y(), RADIUS * scale), Tone.METAL, Tone.EDGE, 1.8);
        Point to = places.apply(chosen);
        double far = Math.max(1, knob.distance(to));
        double reach = (RADIUS - 2) * scale / far;
        pen.line(
                knob.x(),
                knob.y(),
                knob.x() + reach * (to.x() - knob.x()),
                knob.y() + reach * (to.y() - knob.y()),
                Tone.EDGE,
                3.4 * scale);
    }
}
