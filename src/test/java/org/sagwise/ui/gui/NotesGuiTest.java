package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.AccessibleAttribute;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.ScenarioReader;
import org.sagwise.scenario.Note;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.MenuItems;

/** Notes on the bench: written, changed, moved, taken away, undone and saved. */
class NotesGuiTest extends GuiTest {

    private Path file;

    @BeforeEach
    void openAPair() throws Exception {
        file = folder().resolve("pair.sagwise.json");
        Files.copy(Path.of("demo-scenarios", "two-cells-side-by-side.sagwise.json"), file);
        open(file.toString());
    }

    private void focus(String id) {
        robot().interact(() -> node(id).requestFocus());
        settle();
    }

    private String told(String id) {
        return (String) node(id).queryAccessibleAttribute(AccessibleAttribute.TEXT);
    }

    private void write(String text) {
        robot().write(text);
        settle();
    }

    private List<Note> saved() {
        robot().push(KeyCode.CONTROL, KeyCode.S);
        settle();
        Scenario scenario = new ScenarioReader(CatalogueLoader.builtIn())
                .read(file)
                .scenario()
                .orElseThrow();
        return scenario.notes();
    }

    private String undo() {
        return MenuItems.item(node("menus"), "item-undo").getText().replace("_", "");
    }

    private void noteOnA(String text) {
        focus("part-A");
        robot().push(KeyCode.N);
        settle();
        write(text);
        robot().push(KeyCode.CONTROL, KeyCode.ENTER);
        settle();
    }

    @Test
    void key_onAPart_writesANoteThatIsSaved() {
        noteOnA("Bought last week");

        assertFalse(node("note-editor").isVisible());
        assertEquals("Note on cell A: Bought last week", told("note-0"));
        assertEquals("Undo: write a note on cell A", undo());
        assertEquals(List.of(Note.of("A", "Bought last week")), saved());
    }

    @Test
    void escape_whileWriting_leavesNothingBehind() {
        focus("part-A");
        robot().push(KeyCode.N);
        settle();
        write("rubbish");
        assertEquals("7 of 4,000 characters", room());
        robot().push(KeyCode.ESCAPE);
        settle();

        assertFalse(node("note-editor").isVisible());
        assertFalse(isThere("note-0"));
        assertTrue(node("bench").isFocused());
    }

    private String room() {
        return robot().from(node("note-editor"))
                .lookup(".quiet")
                .queryAs(Label.class)
                .getText();
    }

    @Test
    void keys_onAJoint_writeANoteOnIt() {
        focus("terminal-fire-1");
        robot().push(KeyCode.L);
        robot().push(KeyCode.N);
        settle();
        write("loose");
        robot().push(KeyCode.CONTROL, KeyCode.ENTER);
        settle();

        Note note = saved().get(0);
        assertEquals("loose", note.text());
        assertEquals("joint", note.on());
        assertTrue(told("note-0").startsWith("Note on the joint of "), told("note-0"));
    }

    @Test
    void enter_onANote_changesIt() {
        noteOnA("One");
        focus("note-0");
        robot().push(KeyCode.ENTER);
        settle();
        robot().push(KeyCode.CONTROL, KeyCode.A);
        write("Two");
        robot().push(KeyCode.ENTER);
        write("lines");
        robot().push(KeyCode.CONTROL, KeyCode.ENTER);
        settle();

        assertEquals(List.of(Note.of("A", "Two\nlines")), saved());
        assertEquals("Undo: change the note on cell A", undo());
    }

    @Test
    void leaving_byAClickElsewhere_keepsWhatIsWritten() {
        focus("part-A");
        robot().push(KeyCode.N);
        settle();
        write("kept");
        robot().clickOn("#bench-title");
        focus("part-B");

        assertEquals("Note on cell A: kept", told("note-0"));
    }

    @Test
    void drag_ofANote_laysItThere() {
        noteOnA("Here");
        Bounds before = node("note-0").getBoundsInParent();
        robot().drag("#note-0", MouseButton.PRIMARY).moveBy(-60, -20).drop();
        settle();

        assertTrue(saved().get(0).isLaid());
        assertEquals("Undo: move the note on cell A", undo());
        assertNotEquals(before, node("note-0").getBoundsInParent());
    }

    @Test
    void keys_onANote_moveAndDeleteIt() {
        noteOnA("Here");
        focus("note-0");
        robot().push(KeyCode.CONTROL, KeyCode.UP);
        settle();
        assertEquals("Undo: move the note on cell A", undo());
        focus("note-0");
        robot().push(KeyCode.M);
        robot().push(KeyCode.UP);
        robot().push(KeyCode.ENTER);
        settle();
        double dy = saved().get(0).dy();
        focus("note-0");
        robot().push(KeyCode.DELETE);
        settle();
        assertFalse(isThere("note-0"));
        assertEquals("Undo: delete the note on cell A", undo());
        robot().push(KeyCode.CONTROL, KeyCode.Z);
        settle();
        assertEquals(dy, saved().get(0).dy());
    }

    @Test
    void menu_ofTheRightButton_offersANote() {
        robot().rightClickOn("#part-B");
        settle();
        robot().clickOn("#item-note");
        settle();

        assertTrue(node("note-editor").isVisible());
        assertTrue(((TextArea) node("note-text")).isFocused());
    }
}
