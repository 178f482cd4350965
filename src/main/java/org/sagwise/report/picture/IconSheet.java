package org.sagwise.report.picture;

import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.geometry.Round;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Pen;

/**
 * Draws an icon in a square of {@value #UNITS} units.
 *
 * @param icon which one
 * @param side width and height on the surface
 */
record IconSheet(Icon icon, double side) implements Sheet {

    private static final int UNITS = 128;
    private static final double SMALL = 40;

    @Override
    public void paint(Pen surface) {
        ThemedPen pen = new ThemedPen(surface, Theme.LIGHT, 1);
        pen.scaled(side / UNITS, 0, 0, () -> {
            if (icon == Icon.PROGRAM) {
                pen.fill(Round.between(6, 6, 122, 122, 26), Tone.LEVEL);
                staircase(pen, Tone.WRAP_INK);
            } else {
                sheet(pen);
                pen.scaled(0.75, 16, 34, () -> staircase(pen, Tone.LEVEL));
            }
        });
    }

    private static void sheet(ThemedPen pen) {
        pen.shape(Path.polygon(22, 6, 80, 6, 106, 32, 106, 122, 22, 122), Tone.PAPER, Tone.MUTED, 5);
        pen.shape(Path.polygon(80, 6, 106, 32, 80, 32), Tone.PAPER_EDGE, Tone.MUTED, 5);
    }

    /** Small icons have no room for hatching. */
    private void staircase(ThemedPen pen, Tone line) {
        pen.fill(Path.polygon(34, 96, 34, 32, 58, 32, 58, 96), Tone.CLIMB_GROUND);
        pen.fill(Path.polygon(58, 96, 58, 52, 94, 52, 94, 96), Tone.LOAD_GROUND);
        Box sag = new Box(58, 32, 18, 20);
        pen.fill(sag, Tone.SAG_GROUND);
        if (side < SMALL) {
            pen.fill(sag, Tone.SAG);
        } else {
            pen.hatch(sag, Tone.SAG, 8, 3.4);
        }
        pen.draw(Path.line(20, 96, 34, 96, 34, 32, 76, 32, 76, 52, 94, 52, 94, 96, 108, 96), line, 8);
    }
}
