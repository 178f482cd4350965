package org.sagwise.ui.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DrawerFile;
import org.sagwise.part.Catalogue;
import org.sagwise.plan.drawer.Drawer;
import org.sagwise.plan.drawer.DrawerProblem;
import org.sagwise.plan.drawer.OwnCell;
import org.sagwise.scenario.Finding;
import org.sagwise.ui.desk.DrawerModel.Whose;

class DrawerModelTest {

    private static final Catalogue CATALOGUE = CatalogueLoader.builtIn();

    @TempDir
    private Path folder;

    private DrawerModel model;

    private DrawerFile file() {
        return new DrawerFile(folder.resolve("drawer.json"), CATALOGUE);
    }

    @BeforeEach
    void open() {
        model = new DrawerModel(file(), CATALOGUE, () -> Locale.ENGLISH);
        assertEquals(List.of(), model.open(Whose.OWN));
    }

    private static OwnCell cell(String mark) {
        return OwnCell.of(mark, "inr18650-2500-20A");
    }

    private static List<String> add(DrawerModel to, String mark) {
        return to.change(
                drawer -> drawer.find(mark).isEmpty()
                        ? List.of()
                        : List.of(Finding.of("", DrawerProblem.DUPLICATE_MARK, mark)),
                drawer -> drawer.with(cell(mark)));
    }

    private Drawer kept() {
        return ((DrawerFile.Opened.Ok) file().open()).drawer();
    }

    @Test
    void changes_areOnTheDiskAtOnce_andTakenBackOneByOne() {
        add(model, "A");
        add(model, "B");
        assertEquals(List.of("A", "B"), kept().marks());
        assertEquals(List.of(), model.undo());
        assertEquals(List.of("A"), kept().marks());
        model.undo();
        assertEquals(Drawer.EMPTY, kept());
        assertFalse(model.undoableProperty().get());
        assertEquals(List.of(), model.undo(), "nothing is left to take back");
    }

    @Test
    void change_afterAnotherProgramChanged_isMadeOnTopOfThat() {
        DrawerModel other = new DrawerModel(file(), CATALOGUE, () -> Locale.ENGLISH);
        other.open(Whose.OWN);
        add(other, "theirs");

        assertEquals(List.of(), add(model, "mine"));
        assertEquals(List.of("theirs", "mine"), kept().marks());
        assertTrue(add(other, "mine").get(0).contains("Another cell has the mark"), "as soon as it is known");
        assertEquals(List.of("theirs", "mine"), other.drawer().marks());
    }

    /** What the other program did must not be taken back along with what this one did. */
    @Test
    void undo_afterAnotherProgramChanged_takesNothingOfItsAway() {
        add(model, "mine");
        DrawerModel other = new DrawerModel(file(), CATALOGUE, () -> Locale.ENGLISH);
        other.open(Whose.OWN);
        add(other, "theirs");

        assertTrue(model.undo().get(0).contains("Nothing was written over"));
        assertEquals(List.of("mine", "theirs"), kept().marks());
        model.lookAround();
        assertEquals(List.of("mine", "theirs"), model.drawer().marks());
        assertFalse(model.undoableProperty().get());
    }

    @Test
    void drawerOfTheClass_changed_isKeptNowhere() {
        model.open(Whose.CLASS);
        assertEquals(List.of(), add(model, "A"));
        assertEquals(20, model.drawer().cells().size());
        assertFalse(Files.exists(file().path()));
        model.open(Whose.OWN);
        assertEquals(Drawer.EMPTY, model.drawer());
    }

    @Test
    void brokenFile_isToldAndNeverWrittenOver() throws IOException {
        Files.writeString(file().path(), "{\"sagwise_drawer\": 1, \"cells\": [");
        assertFalse(model.open(Whose.OWN).isEmpty());
        assertFalse(add(model, "A").isEmpty());
        assertEquals("{\"sagwise_drawer\": 1, \"cells\": [", Files.readString(file().path()));
    }
}
