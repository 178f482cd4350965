package org.sagwise.scenario.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Note;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/** Notes are written, changed, laid elsewhere and taken away. */
class NoteEditsTest {

    private static final Scenario BENCH = Scenario.of(
            "",
            List.of(Part.of("A", PartKind.CELL), Part.of("coil", PartKind.COIL, "ohm", 1)),
            List.of(
                    Link.ideal(end("A.+"), end("coil.1")),
                    Link.of(Keys.of("id", "back", "from", "coil.2", "to", "A.-", "ideal", true))));

    private static TerminalRef end(String text) {
        return TerminalRef.parse(text).orElseThrow();
    }

    private static Scenario noted() {
        return BENCH.withNotes(List.of(Note.of("A", "first"), Note.of("back", "second")));
    }

    @Test
    void add_onAPart_isTheLastNote() {
        Scenario after = new AddNote(new NoteTarget.OnPart("A"), "  new  ").apply(noted());
        assertEquals(3, after.notes().size());
        assertEquals(Note.of("A", "new"), after.notes().get(2));
    }

    @Test
    void add_onAJointWithoutAnId_givesItOne() {
        Scenario after = new AddNote(new NoteTarget.OnJoint(0), "loose").apply(BENCH);
        assertEquals(Optional.of("joint"), after.links().get(0).id());
        assertEquals("joint", after.notes().get(0).on());
        Scenario twice = new AddNote(new NoteTarget.OnJoint(0), "still").apply(after);
        assertEquals(after.links(), twice.links());
    }

    @Test
    void add_nothingOrOnNothing_changesNothing() {
        assertSame(BENCH, new AddNote(new NoteTarget.OnPart("A"), " \n ").apply(BENCH));
        assertSame(BENCH, new AddNote(new NoteTarget.OnPart("B"), "x").apply(BENCH));
        assertSame(BENCH, new AddNote(new NoteTarget.OnJoint(2), "x").apply(BENCH));
    }

    @Test
    void change_textAndPlace_keepEachOther() {
        Scenario moved = new ChangeNote(0, new ChangeNote.Place(2.5, -1)).apply(noted());
        Scenario both = new ChangeNote(0, new ChangeNote.Text("other")).apply(moved);
        assertEquals(Note.of("A", "other").lying(2.5, -1), both.notes().get(0));
        assertTrue(both.notes().get(0).isLaid());
    }

    @Test
    void add_longerThanAllowed_isCutBetweenCharacters() {
        String text = "x".repeat(3_999) + "\uD83D\uDD0B";
        Scenario after = new AddNote(new NoteTarget.OnPart("A"), text).apply(BENCH);
        assertEquals("x".repeat(3_999), after.notes().get(0).text());
    }

    @Test
    void delete_one_leavesTheOther() {
        Scenario after = new DeleteNotes(Set.of(0, 9)).apply(noted());
        assertEquals(List.of(Note.of("back", "second")), after.notes());
    }

    @Test
    void name_ofEach_saysWhatTheNoteIsOn() {
        assertEquals(
                "write a note on the coil",
                new AddNote(new NoteTarget.OnPart("coil"), "x").name(BENCH).in(Locale.ENGLISH));
        assertEquals(
                "move the note on the joint of the coil's second end and cell A's minus",
                new ChangeNote(1, new ChangeNote.Place(0, 0)).name(noted()).in(Locale.ENGLISH));
        assertEquals(
                "Notiz zu Zelle A löschen",
                new DeleteNotes(Set.of(0)).name(noted()).in(Locale.GERMAN));
    }
}
