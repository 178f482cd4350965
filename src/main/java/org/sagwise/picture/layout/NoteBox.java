package org.sagwise.picture.layout;

import org.sagwise.scenario.Note;

import java.awt.Point;
import java.awt.Rectangle;
import java.util.List;

/**
 * Where a note stands.
 *
 * @param note the note
 * @param lines its text, broken into lines
 * @param box its outline
 * @param anchor the point on the bench that it speaks of
 */
public record NoteBox(Note note, List<String> lines, Rectangle box, Point anchor) {

    public NoteBox {
        lines = List.copyOf(lines);
    }
}
