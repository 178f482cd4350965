package org.sagwise.picture.bench;

import java.awt.Rectangle;
import java.awt.geom.Path2D;
import org.sagwise.picture.layout.NoteBox;
import org.sagwise.picture.look.Align;
import org.sagwise.picture.look.Pen;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.Tone;

/** Notes as slips of paper with a corner turned down and a line to what they speak of. */
final class NotePainter {

    private static final double EAR = 10;

    private NotePainter() {}

    static void paint(Pen pen, NoteBox note) {
        Rectangle box = note.box();
        double dx = note.anchor().x - box.getCenterX();
        double dy = note.anchor().y - box.getCenterY();
        double share = Math.min(
                box.width / 2.0 / Math.max(1e-9, Math.abs(dx)), box.height / 2.0 / Math.max(1e-9, Math.abs(dy)));
        double nearX = box.getCenterX() + Math.min(1, share) * dx;
        double nearY = box.getCenterY() + Math.min(1, share) * dy;
        pen.line(nearX, nearY, note.anchor().x, note.anchor().y, Tone.FELT, 4);
        pen.line(nearX, nearY, note.anchor().x, note.anchor().y, Tone.NOTE_EDGE, 1.6);
        pen.shape(Shapes.disc(note.anchor().x, note.anchor().y, 4), Tone.NOTE, Tone.NOTE_EDGE, 1.6);
        Path2D slip = Shapes.polygon(
                box.x,
                box.y,
                box.getMaxX() - EAR,
                box.y,
                box.getMaxX(),
                box.y + EAR,
                box.getMaxX(),
                box.getMaxY(),
                box.x,
                box.getMaxY());
        pen.shape(slip, Tone.NOTE, Tone.NOTE_EDGE, 1.4);
        pen.draw(
                Shapes.line(box.getMaxX() - EAR, box.y, box.getMaxX() - EAR, box.y + EAR, box.getMaxX(), box.y + EAR),
                Tone.NOTE_EDGE,
                1.2);
        double line = 17 * pen.textScale();
        double y = box.y + 10 + 0.78 * line;
        for (String text : note.lines()) {
            pen.textWithin(text, box.x + 10, y, box.width - 16, TextStyle.PLAIN, Tone.INK, Align.LEFT);
            y += line;
        }
    }
}
