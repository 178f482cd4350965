package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import javafx.stage.Stage;
import javafx.stage.Window;
import javafx.stage.WindowEvent;
import org.junit.jupiter.api.Test;
import org.sagwise.ui.MenuItems;

/** What a person chooses about the window, and what is kept of it. */
class ViewGuiTest extends GuiTest {

    @Test
    void fullScreen_isLeftByF11AndNotByEscape() throws Exception {
        open();
        Stage window = (Stage) node("bench").getScene().getWindow();
        robot().push(KeyCode.F11);
        robot().push(KeyCode.ESCAPE);
        settle();
        assertTrue(window.isFullScreen());
        robot().push(KeyCode.F11);
        settle();
        assertFalse(window.isFullScreen());
    }

    @Test
    void firstStart_noticeRead_isNotShownAgain() throws Exception {
        openWith("{\"language\": \"en\"}");
        assertTrue(isThere("first-notice"));
        assertTrue(isThere("safety-first-start"));

        work("first-notice-ok_done");
        assertFalse(isThere("first-notice"));
        assertTrue(settings().contains("\"notice_read\" : 1"), settings());
    }

    @Test
    void notice_closedUnread_comesAgain() throws Exception {
        openWith("{\"language\": \"en\"}");
        Platform.runLater(() -> node("first-notice").getScene().getWindow().hide());
        settle();

        assertFalse(settings().contains("notice_read"), settings());
    }

    @Test
    void language_chosen_changesTheWindowAndAnUntouchedExample() throws Exception {
        open();
        choose("item-example-two-by-two");
        choose("item-language-de");

        assertEquals("Taster offen", text("fire-state"));
        assertEquals("Zwei Reihen zu zweit", text("bench-title"));
        assertTrue(settings().contains("\"language\" : \"de\""), settings());
    }

    @Test
    void language_chosen_keepsABenchFromAFile() throws Exception {
        open("demo-scenarios/two-by-two.sagwise.json");
        choose("item-language-de");

        assertEquals("Taster offen", text("fire-state"));
        assertEquals("Two rows of two", text("bench-title"));
    }

    @Test
    void language_namedByTheCall_holdsButIsNotKept() throws Exception {
        open("--language=de");

        assertEquals("Taster offen", text("fire-state"));
        assertEquals("Zwei Zellen nebeneinander", text("bench-title"));
        assertFalse(settings().contains("\"de\""), settings());
    }

    @Test
    void looks_chosen_changeTheStyleSheets() throws Exception {
        open();
        choose("item-looks-dark");
        assertTrue(styles().anyMatch(sheet -> sheet.endsWith("dark.css")));

        choose("item-looks-high-contrast");
        assertTrue(styles().anyMatch(sheet -> sheet.endsWith("high-contrast.css")));
        assertFalse(styles().anyMatch(sheet -> sheet.endsWith("dark.css")));
    }

    @Test
    void textSize_larger_makesTheTitleLarger() throws Exception {
        open();
        double before = ((Region) node("bench-title")).getHeight();
        choose("item-text-larger");
        choose("item-text-larger");

        assertEquals(1.5, ((Region) node("bench-title")).getHeight() / before, 0.1);
    }

    @Test
    void examples_openedAndHidden_giveTheBenchTheirRoom() throws Exception {
        open();
        assertFalse(isThere("examples"), "closed until somebody asks");
        robot().push(KeyCode.CONTROL, KeyCode.F9).push(KeyCode.F9);
        settle();
        assertTrue(isThere("examples"));
        double before = ((Region) node("bench")).getWidth();
        robot().push(KeyCode.F9);
        settle();

        assertFalse(isThere("examples"));
        assertTrue(((Region) node("bench")).getWidth() > before + 100);
    }

    @Test
    void schematic_chosen_movesTheTouchNodesAndRefusesToMoveParts() throws Exception {
        open();
        choose("item-example-two-by-two");
        var onBench = node("part-A").getBoundsInParent();
        robot().push(KeyCode.SHIFT, KeyCode.F9);
        settle();

        var asSymbol = node("part-A").getBoundsInParent();
        assertNotEquals(onBench, asSymbol);
        assertTrue(settings().contains("\"drawing\" : \"schematic\""), settings());
        assertFalse(node("potential-legend").isVisible());

        robot().drag(node("part-A")).dropBy(120, 60);
        settle();
        assertEquals(asSymbol, node("part-A").getBoundsInParent());
        assertTrue(text("status-line").contains("F9"), text("status-line"));

        robot().push(KeyCode.SHIFT, KeyCode.F9);
        settle();
        assertEquals(onBench, node("part-A").getBoundsInParent());
        assertFalse(text("status-line").contains("F9"), text("status-line"));
    }

    @Test
    void zoom_inAndFit_movesTheTouchNodesAlong() throws Exception {
        open();
        double fitted = node("part-A").getBoundsInParent().getHeight();
        choose("item-zoom-in");
        assertEquals(1.25, node("part-A").getBoundsInParent().getHeight() / fitted, 0.01);

        choose("item-fit");
        assertEquals(fitted, node("part-A").getBoundsInParent().getHeight(), 0.01);
    }

    @Test
    void staircase_walkedByKeys_lightsPartAfterPart() throws Exception {
        open();
        robot().press(KeyCode.SPACE);
        robot().interact(() -> node("staircase").requestFocus());
        robot().push(KeyCode.RIGHT);
        settle();
        String first = text("status-line");
        robot().push(KeyCode.RIGHT);
        settle();
        String second = text("status-line");
        robot().release(KeyCode.SPACE);

        assertTrue(first.startsWith("Cell "), first);
        assertFalse(first.equals(second), second);
    }

    @Test
    void bench_pointedAt_isSpokenByTheStaircase() throws Exception {
        open();
        robot().moveTo("#part-B");
        settle();

        String spoken = node("staircase").getAccessibleText();
        assertTrue(spoken.contains("Cell B"), spoken);
    }

    @Test
    void close_withUnsavedChanges_asksAndCanStay() throws Exception {
        open();
        choose("item-title");
        robot().interact(() -> ((TextField) node("title-field")).setText("Mine"));
        work("title-dialog-ok_done");
        Window window = node("bench").getScene().getWindow();
        Platform.runLater(() -> window.fireEvent(new WindowEvent(window, WindowEvent.WINDOW_CLOSE_REQUEST)));
        settle();
        assertTrue(isThere("unsaved"));

        robot().push(KeyCode.ESCAPE);
        settle();
        assertTrue(window.isShowing());
    }

    private Stream<String> styles() {
        return node("bench").getScene().getStylesheets().stream();
    }

    private String settings() throws Exception {
        return Files.readString(folder().resolve("config").resolve("settings.json"));
    }

    /** Chooses in a menu what a person would find there. */
    private void choose(String id) {
        MenuItem item = MenuItems.item(node("menus"), id);
        Platform.runLater(item::fire);
        settle();
    }
}
