package org.sagwise.picture.bench;

import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.look.ColourScale;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Colour;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.reading.CoilReading;

/** A wound coil between two posts, in the colour of its heat. */
final class CoilPainter implements PartPainter {

    /** Temperatures at the dark and at the bright end of the heat scale, °C. */
    static final double DARK_C = -60;

    static final double BRIGHT_C = 440;

    /** From here on a coil's colour is worth a legend, °C. */
    static final double WARM_C = 50;

    private static final double ROOM_C = 20;
    private static final int FEWEST_WRAPS = 4;
    private static final int MOST_WRAPS = 9;
    private static final int USUAL_WRAPS = 6;
    private static final double TOP = -40;
    private static final double RADIUS = 28;
    private static final double WIRE = 7;

    @Override
    public void paint(ThemedPen pen, BenchScene scene, PartBox box) {
        double temperatureC = scene.readings()
                .coil(box.id())
                .map(CoilReading::temperatureC)
                .filter(Double::isFinite)
                .orElse(ROOM_C);
        int wraps = scene.bench()
                .coils()
                .get(box.id())
                .winding()
                .map(winding -> (int) Math.round(winding.wraps()))
                .orElse(USUAL_WRAPS);
        int drawn = Math.max(FEWEST_WRAPS, Math.min(MOST_WRAPS, wraps));
        Colour heat = heat(temperatureC);
        pen.within(box.x(), box.y(), box.quarters(), () -> helix(pen, drawn, heat));
    }

    static Colour heat(double temperatureC) {
        return ColourScale.INFERNO.at((temperatureC - DARK_C) / (BRIGHT_C - DARK_C));
    }

    private static void helix(ThemedPen pen, int wraps, Colour heat) {
        double pitch = -2 * TOP / wraps;
        Path.Builder back = new Path.Builder();
        Path.Builder front = new Path.Builder();
        for (int i = 0; i < wraps; i++) {
            double y = TOP + i * pitch;
            front.moveTo(-RADIUS, y);
            front.curveTo(-RADIUS, y + 0.55 * pitch, RADIUS, y + 0.25 * pitch, RADIUS, y + pitch * 0.72);
            if (i < wraps - 1) {
                back.moveTo(RADIUS, y + pitch * 0.72);
                back.curveTo(RADIUS, y + pitch * 0.5, -RADIUS, y + pitch * 0.9, -RADIUS, y + pitch);
            }
        }
        Path.Builder legs = new Path.Builder();
        legs.moveTo(0, -56);
        legs.curveTo(0, TOP - 2, -RADIUS, TOP - 8, -RADIUS, TOP);
        legs.moveTo(RADIUS, -TOP - 0.28 * pitch);
        legs.curveTo(RADIUS, -TOP + 8, 0, -TOP + 2, 0, 56);
        wire(pen, legs.build(), heat);
        wire(pen, back.build(), heat.darker());
        wire(pen, front.build(), heat);
        pen.draw(front.build(), sheen(heat), 1.5);
        post(pen, -60, -46);
        post(pen, 46, 60);
    }

    /** The light that a round wire throws back. */
    private static Colour sheen(Colour heat) {
        return new Colour((heat.red() + 2 * 190) / 3, (heat.green() + 2 * 190) / 3, (heat.blue() + 2 * 200) / 3, 255);
    }

    private static void wire(ThemedPen pen, Path way, Colour heat) {
        pen.draw(way, Tone.CONDUCTOR_EDGE, WIRE + 2.6);
        pen.draw(way, heat, WIRE);
    }

    private static void post(ThemedPen pen, double from, double to) {
        pen.plate(Box.between(-14, from, 14, to), 3, Tone.METAL, Tone.EDGE, 1.8);
    }
}
