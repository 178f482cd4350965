package org.sagwise.picture.bench;

import org.sagwise.picture.geometry.GridBox;
import org.sagwise.picture.geometry.Oval;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.layout.NoteBox;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Align;

/** Notes as slips of paper with a corner turned down and a line to what they speak of. */
final class NotePainter {

    private static final double EAR = 10;

    private NotePainter() {}

    static void paint(ThemedPen pen, NoteBox note) {
        GridBox box = note.box();
        double dx = note.anchor().x() - box.middleX();
        double dy = note.anchor().y() - box.middleY();
        double share = Math.min(
                box.width() / 2.0 / Math.max(1e-9, Math.abs(dx)), box.height() / 2.0 / Math.max(1e-9, Math.abs(dy)));
        double nearX = box.middleX() + Math.min(1, share) * dx;
        double nearY = box.middleY() + Math.min(1, share) * dy;
        pen.line(nearX, nearY, note.anchor().x(), note.anchor().y(), Tone.FELT, 4);
        pen.line(nearX, nearY, note.anchor().x(), note.anchor().y(), Tone.NOTE_EDGE, 1.6);
        pen.shape(Oval.circle(note.anchor().x(), note.anchor().y(), 4), Tone.NOTE, Tone.NOTE_EDGE, 1.6);
        Path slip = Path.polygon(
                box.x(),
                box.y(),
                box.right() - EAR,
                box.y(),
                box.right(),
                box.y() + EAR,
                box.right(),
                box.bottom(),
                box.x(),
                box.bottom());
        pen.shape(slip, Tone.NOTE, Tone.NOTE_EDGE, 1.4);
        pen.draw(
                Path.line(box.right() - EAR, box.y(), box.right() - EAR, box.y() + EAR, box.right(), box.y() + EAR),
                Tone.NOTE_EDGE,
                1.2);
        double line = 17 * pen.textScale();
        double y = box.y() + 10 + 0.78 * line;
        for (String text : note.lines()) {
            pen.textWithin(text, box.x() + 10, y, box.width() - 16, TextStyle.PLAIN, Tone.INK, Align.LEFT);
            y += line;
        }
    }
}
