package org.sagwise.picture.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Note;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/** Where notes lie: where they were laid, and never over a part. */
class NotePlacesTest {

    private static Scenario bench() {
        return Scenario.of(
                "",
                List.of(
                        Part.of("A", PartKind.CELL, "model", "inr18650-2500-20A", "charge", 1),
                        Part.of("fire", PartKind.SWITCH),
                        Part.of("coil", PartKind.COIL, "ohm", 1)),
                List.of(joined("A.+", "fire.1"), joined("fire.2", "coil.1"), joined("coil.2", "A.-")));
    }

    private static Link joined(String from, String to) {
        return Link.ideal(
                TerminalRef.parse(from).orElseThrow(), TerminalRef.parse(to).orElseThrow());
    }

    private static NoteBox only(Scenario scenario, Drawing drawing) {
        return BenchLayout.of(scenario, 1, drawing).notes().get(0);
    }

    private static Scenario noted(Note note) {
        return bench().withNotes(List.of(note));
    }

    @Test
    void laid_whereThereIsRoom_liesThere() {
        NoteBox box = only(noted(Note.of("A", "Here").lying(0, -12)), Drawing.BENCH);
        assertEquals(0, box.dx(), 0.05);
        assertEquals(-12, box.dy(), 0.05);
    }

    @Property(tries = 60)
    void laid_anywhere_coversNoPart(
            @ForAll @DoubleRange(min = -12, max = 12) double dx, @ForAll @DoubleRange(min = -12, max = 12) double dy) {
        Scenario scenario = noted(Note.of("A", "A note of several words").lying(dx, dy));
        BenchLayout layout = BenchLayout.of(scenario);
        NoteBox note = layout.notes().get(0);
        for (PartBox part : layout.parts()) {
            assertFalse(part.body().intersects(note.box()), part.id() + " " + note.box());
        }
        assertTrue(layout.bounds().contains(note.box().box()));
    }

    @Test
    void laid_inASchematic_isFoundAPlaceFor() {
        NoteBox free = only(noted(Note.of("A", "Here")), Drawing.SCHEMATIC);
        NoteBox laid = only(noted(Note.of("A", "Here").lying(0, -12)), Drawing.SCHEMATIC);
        assertEquals(free.box(), laid.box());
    }

    @Test
    void severalLines_stayLines() {
        NoteBox box = only(noted(Note.of("A", "One\n\nThree")), Drawing.BENCH);
        assertEquals(List.of("One", "", "Three"), box.lines());
    }

    @Test
    void longText_isNoTower() {
        NoteBox box = only(noted(Note.of("A", "some words ".repeat(350))), Drawing.BENCH);
        assertTrue(box.box().height() < 3 * box.box().width(), box.box().toString());
    }

    @Test
    void noteAt_insideAndOutside_findsIt() {
        BenchLayout layout = BenchLayout.of(noted(Note.of("A", "Here")));
        NoteBox box = layout.notes().get(0);
        assertEquals(
                0,
                layout.noteAt(box.box().middleX(), box.box().middleY())
                        .orElseThrow()
                        .index());
        assertTrue(layout.noteAt(box.box().x() - 5, box.box().y()).isEmpty());
    }
}
