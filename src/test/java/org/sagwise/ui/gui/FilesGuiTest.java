package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javafx.geometry.Bounds;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ScenarioFiles;
import org.sagwise.fixture.Packs;
import org.testfx.util.WaitForAsyncUtils;

/** Opening files, broken ones too, and what happens to unsaved changes. */
class FilesGuiTest extends GuiTest {

    private static final String BROKEN = """
            {"sagwise": 1, "title": "Broken",
             "parts": [{"id": "A", "kind": "sell"},
                       {"id": "coil", "kind": "coil", "ohm": -1}],
             "links": [{"from": "A.+", "to": "nowhere.1", "ideal": true}]}
            """;

    @Test
    void open_aFileFromTheCommandLine_liesOnTheBench() throws Exception {
        Path file = folder().resolve("mine.sagwise.json");
        Files.write(file, DemoScenarios.bytes("two-by-two"));
        open(file.toString());

        assertEquals("Two rows of two", text("bench-title"));
        for (String part : List.of("A", "B", "C", "D", "fire", "coil")) {
            assertTrue(isThere("part-" + part), part);
        }
    }

    @Test
    void open_aDemoByItsName_liesOnTheBench() throws Exception {
        open("--demo=two-by-two");

        assertEquals("Two rows of two", text("bench-title"));
        assertTrue(isThere("part-D"));
    }

    @Test
    void open_aBrokenFile_listsEveryProblemAndKeepsTheBench() throws Exception {
        Path file = Files.writeString(folder().resolve("broken.sagwise.json"), BROKEN);
        open(file.toString());

        List<String> places = robot().lookup(".trouble-place").queryAllAs(Label.class).stream()
                .map(Label::getText)
                .toList();
        assertEquals(3, places.size(), places.toString());
        assertTrue(places.get(0).startsWith("parts[0].kind"), places.toString());
        robot().push(KeyCode.ESCAPE);
        settle();

        assertFalse(isThere("troubles"));
        assertEquals("Two cells side by side", text("bench-title"));
    }

    @Test
    void open_manyCells_listsThoseThatWorkHardestAndSaysSo() throws Exception {
        Path file = folder().resolve("many.sagwise.json");
        ScenarioFiles.save(file, Packs.of(14, 7).released());
        open(file.toString());

        assertEquals("14 × 7", text("bench-title"));
        assertEquals(24, robot().lookup("#limits .load-bar").queryAll().size());
        assertTrue(text("limits-remark").startsWith("24 of 98 cells"), text("limits-remark"));
    }

    @Test
    void open_aVeryLargeBench_isSetOutWhileThePresentOneStays() throws Exception {
        Path file = folder().resolve("large.sagwise.json");
        ScenarioFiles.save(file, Packs.of(20, 10).released());
        open(file.toString());

        WaitForAsyncUtils.waitFor(
                60, TimeUnit.SECONDS, () -> text("bench-title").equals("20 × 10"));
        settle();
        assertFalse(node("opening").isVisible());
        assertTrue(isThere("part-c19-9"));
    }

    @Test
    void title_changed_isMarkedUnsavedUntilUndone() throws Exception {
        open();
        robot().push(KeyCode.F2);
        settle();
        robot().interact(() -> ((TextField) node("title-field")).setText("Mine"));
        work("title-dialog-ok_done");
        assertEquals("Mine", text("bench-title"));
        assertTrue(title().startsWith("• Mine"), title());

        robot().push(KeyCode.SHORTCUT, KeyCode.Z);
        settle();
        assertEquals("Two cells side by side", text("bench-title"));
        assertEquals("Two cells side by side — Sagwise", title());
    }

    @Test
    void example_withUnsavedChanges_asksFirst() throws Exception {
        open();
        robot().push(KeyCode.F2);
        settle();
        robot().interact(() -> ((TextField) node("title-field")).setText("Mine"));
        work("title-dialog-ok_done");
        openExamples();
        work("example-one-cell-on-half-an-ohm");
        assertTrue(isThere("unsaved"));

        robot().push(KeyCode.ESCAPE);
        settle();
        assertEquals("Mine", text("bench-title"));

        openExamples();
        work("example-one-cell-on-half-an-ohm");
        work("unsaved-no");
        assertEquals("One cell on half an ohm", text("bench-title"));
    }

    /** Its words are longer than some screens are wide; in one line they would cost the dialog its height. */
    @Test
    void save_overWhatOthersWrote_asksInADialogThatShowsItsButtonsWhole() throws Exception {
        Path file = folder().resolve("mine.sagwise.json");
        Files.write(file, DemoScenarios.bytes("two-by-two"));
        open(file.toString());
        robot().push(KeyCode.F2);
        settle();
        robot().interact(() -> ((TextField) node("title-field")).setText("Mine"));
        work("title-dialog-ok_done");
        Files.write(file, DemoScenarios.bytes("two-in-a-row"));
        robot().push(KeyCode.SHORTCUT, KeyCode.S);
        settle();

        Region pane = (Region) node("changed");
        assertTrue(pane.getWidth() < 800, "as wide as " + pane.getWidth());
        Bounds button = pane.sceneToLocal(
                node("changed-ok_done").localToScene(node("changed-ok_done").getBoundsInLocal()));
        assertTrue(button.getMaxY() < pane.getHeight(), button + " in " + pane.getHeight());
        work("changed-cancel_close");
        assertEquals(new String(DemoScenarios.bytes("two-in-a-row"), StandardCharsets.UTF_8), Files.readString(file));
    }

    private String title() {
        return ((Stage) node("bench").getScene().getWindow()).getTitle();
    }
}
