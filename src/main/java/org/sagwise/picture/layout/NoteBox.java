package org.sagwise.picture.layout;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.geom.Point2D;
import java.util.List;
import org.sagwise.scenario.Note;

/**
 * Where a note lies.
 *
 * @param index its place among the notes of the scenario
 * @param note the note
 * @param lines its text, broken into lines
 * @param box its outline
 * @param target the middle of the part or joint that it speaks of
 * @param anchor where the line from it to that ends
 */
public record NoteBox(int index, Note note, List<String> lines, Rectangle box, Point target, Point anchor) {

    public NoteBox {
        lines = List.copyOf(lines);
    }

    /** Its middle. */
    public Point2D middle() {
        return new Point2D.Double(box.getCenterX(), box.getCenterY());
    }

    /** How far its middle lies to the right of its target, grid units. */
    public double dx() {
        return (box.getCenterX() - target.x) / PartShape.GRID;
    }

    /** How far its middle lies below its target, grid units. */
    public double dy() {
        return (box.getCenterY() - target.y) / PartShape.GRID;
    }
}
