package org.sagwise.picture.export;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import org.sagwise.picture.look.Pen;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.look.Tone;

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
    public void paint(Graphics2D surface) {
        AffineTransform before = surface.getTransform();
        surface.scale(side / UNITS, side / UNITS);
        Pen pen = new Pen(surface, Theme.LIGHT, 1);
        if (icon == Icon.PROGRAM) {
            pen.fill(new RoundRectangle2D.Double(6, 6, 116, 116, 52, 52), Tone.LEVEL);
            staircase(pen, Tone.WRAP_INK);
        } else {
            sheet(pen);
            surface.translate(16, 34);
            surface.scale(0.75, 0.75);
            staircase(pen, Tone.LEVEL);
        }
        surface.setTransform(before);
    }

    private static void sheet(Pen pen) {
        pen.shape(outline(true, 22, 6, 80, 6, 106, 32, 106, 122, 22, 122), Tone.PAPER, Tone.MUTED, 5);
        pen.shape(outline(true, 80, 6, 106, 32, 80, 32), Tone.PAPER_EDGE, Tone.MUTED, 5);
    }

    /** Small icons have no room for hatching. */
    private void staircase(Pen pen, Tone line) {
        pen.fill(outline(true, 34, 96, 34, 32, 58, 32, 58, 96), Tone.CLIMB_GROUND);
        pen.fill(outline(true, 58, 96, 58, 52, 94, 52, 94, 96), Tone.LOAD_GROUND);
        Rectangle2D sag = new Rectangle2D.Double(58, 32, 18, 20);
        pen.fill(sag, Tone.SAG_GROUND);
        if (side < SMALL) {
            pen.fill(sag, Tone.SAG);
        } else {
            pen.hatch(sag, Tone.SAG, 8, 3.4);
        }
        pen.draw(outline(false, 20, 96, 34, 96, 34, 32, 76, 32, 76, 52, 94, 52, 94, 96, 108, 96), line, 8);
    }

    private static Shape outline(boolean closed, double... coordinates) {
        Path2D path = new Path2D.Double();
        path.moveTo(coordinates[0], coordinates[1]);
        for (int i = 2; i + 1 < coordinates.length; i += 2) {
            path.lineTo(coordinates[i], coordinates[i + 1]);
        }
        if (closed) {
            path.closePath();
        }
        return path;
    }
}
