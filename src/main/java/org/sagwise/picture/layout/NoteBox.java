package org.sagwise.picture.layout;

import java.util.List;
import org.sagwise.picture.geometry.GridBox;
import org.sagwise.picture.geometry.GridPoint;
import org.sagwise.picture.geometry.Point;
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
public record NoteBox(int index, Note note, List<String> lines, GridBox box, GridPoint target, GridPoint anchor) {

    public NoteBox {
        lines = List.copyOf(lines);
    }

    /** Its middle. */
    public Point middle() {
        return new Point(box.middleX(), box.middleY());
    }

    /** How far its middle lies to the right of its target, grid units. */
    public double dx() {
        return (box.middleX() - target.x()) / PartShape.GRID;
    }

    /** How far its middle lies below its target, grid units. */
    public double dy() {
        return (box.middleY() - target.y()) / PartShape.GRID;
    }
}
