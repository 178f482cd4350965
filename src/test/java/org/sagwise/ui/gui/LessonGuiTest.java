package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.application.Platform;
import javafx.scene.AccessibleAttribute;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.sagwise.ui.MenuItems;
import org.testfx.util.WaitForAsyncUtils;

/** A whole lesson by mouse, a whole lesson by keyboard, and the ways out of one. */
class LessonGuiTest extends GuiTest {

    private static final String FIRST = "lesson-01-close-the-ring";

    @BeforeEach
    void openTheWindow() throws Exception {
        open();
        robot().clickOn("#tab-lessons");
        awaitLesson(FIRST);
    }

    private void click(String id) {
        robot().clickOn("#" + id);
        settle();
    }

    private void next() {
        click("button-lesson-next");
    }

    private boolean isOff(String id) {
        return node(id).isDisabled();
    }

    /** A reading of the held button counts only for who has held it. */
    private void hold() {
        ToggleButton latch = (ToggleButton) node("latch");
        robot().interact(latch::fire);
        robot().interact(latch::fire);
    }

    private void read(String number) {
        hold();
        robot().clickOn("#lesson-number").write(number);
        click("lesson-number-do");
    }

    private void join(String one, String other) {
        click("terminal-" + one);
        click("terminal-" + other);
    }

    /** Numbers as in the lesson: 4.2 V at rest, 1 Ω, ideal joints, so 4.20 A. */
    @Test
    void lesson_playedByMouse_reachesItsSummary() {
        click(FIRST);
        assertEquals("Step 1 of 13", text("lesson-place"));
        next();

        assertEquals("Predict", text("lesson-kind"));
        assertTrue(isOff("button-lesson-next"));
        assertTrue(isOff("fire"));
        click("choice-3");
        assertFalse(isOff("fire"));
        next();

        robot().moveTo("#fire").press(MouseButton.PRIMARY);
        settle();
        assertEquals("Firing", text("fire-state"));
        robot().release(MouseButton.PRIMARY);
        read("0");
        next();

        click("choice-1");
        assertTrue(isOff("fire"), "how sure comes first");
        assertTrue(isOff("button-lesson-next"));
        click("sure-3");
        assertFalse(isOff("fire"));
        next();
        assertEquals("Your turn", text("lesson-kind"));
        click("join-ideal");
        join("coil-2", "A-minus");
        assertEquals("✓ Done.", text("lesson-status"));
        next();

        click("button-probe-red");
        click("terminal-fire-1");
        click("button-probe-black");
        click("terminal-fire-2");
        assertEquals("✓ Done.", text("lesson-status"));
        next();
        read("4.2");
        next();
        read("4.1");
        assertTrue(text("lesson-status").startsWith("The bench does not say 4.10 A"));
        robot().doubleClickOn("#lesson-number");
        read("4.2");
        assertEquals("✓ Well read: the bench says 4.20 A.", text("lesson-status"));
        next();

        assertEquals("What is behind it", text("lesson-kind"));
        assertTrue(robot().lookup(".verdict-missed").tryQuery().isPresent());
        assertTrue(text("verdict-sure").startsWith("You were sure of it"), text("verdict-sure"));
        next();
        assertTrue(isThere("safety-hot"));
        next();
        click("choice-1");
        next();
        click("choice-2");
        next();
        click("choice-2");
        next();

        assertEquals(
                "4 of 5 answers agree with what came out. Where you were sure, 0 of 1 agree.",
                text("lesson-summary-count"));
        click("lesson-following");
        assertEquals("Amps around a ring", text("lesson-title"));
    }

    private void key(KeyCode... codes) {
        robot().push(codes);
        settle();
    }

    private Node focused() {
        return node("fire").getScene().getFocusOwner();
    }

    private void type(String number) {
        hold();
        assertTrue(focused() instanceof TextInputControl, String.valueOf(focused()));
        robot().write(number);
        key(KeyCode.ENTER);
    }

    /** Nothing is focused by the test: the lesson itself leads the keyboard on. */
    @Test
    void lesson_playedByKeyboard_reachesItsSummary() {
        robot().interact(() -> node(FIRST).requestFocus());
        key(KeyCode.ENTER);
        assertEquals("button-lesson-next", focused().getId());
        key(KeyCode.ENTER);
        assertEquals("choice-1", focused().getId());

        key(KeyCode.DIGIT3);
        key(KeyCode.ENTER);

        robot().press(KeyCode.SPACE);
        settle();
        assertEquals("Firing", text("fire-state"));
        robot().release(KeyCode.SPACE);
        type("0");
        key(KeyCode.ENTER);
        key(KeyCode.DIGIT2);
        assertEquals("sure-1", focused().getId());
        key(KeyCode.DIGIT2);
        key(KeyCode.ENTER);

        key(KeyCode.F3);
        key(KeyCode.F3);
        assertFalse(isThere("lesson-hint-2"), "the next hint comes after something was tried");
        key(KeyCode.SPACE);
        key(KeyCode.F3);
        assertTrue(isThere("lesson-hint-2"));
        key(KeyCode.SHIFT, KeyCode.F3);
        assertTrue(text("lesson-status").startsWith("Shown by the program"));
        key(KeyCode.ENTER);

        key(KeyCode.SHIFT, KeyCode.F3);
        key(KeyCode.ALT, KeyCode.RIGHT);
        type("4.2");
        key(KeyCode.ENTER);
        type("4.2 A");
        key(KeyCode.ENTER);
        assertTrue(robot().lookup(".verdict-met").tryQuery().isPresent());
        key(KeyCode.ENTER);
        key(KeyCode.ENTER);
        key(KeyCode.DIGIT1);
        key(KeyCode.ENTER);
        key(KeyCode.DIGIT2);
        key(KeyCode.ENTER);
        key(KeyCode.DIGIT2);
        key(KeyCode.ENTER);

        assertEquals("5 of 5 answers agree with what came out.", text("lesson-summary-count"));
        assertEquals("lesson-following", focused().getId());
    }

    @Test
    void leave_afterEdits_bringsBackWhatLayThereBefore() {
        String before = text("bench-title");
        click(FIRST);
        robot().push(KeyCode.ALT, KeyCode.RIGHT);
        click("choice-1");
        click("join-ideal");
        join("coil-2", "A-minus");
        click("button-lesson-leave");

        assertEquals(before, text("bench-title"));
        assertFalse(isThere("lesson"));
        assertFalse(isOff("fire"));
    }

    @Test
    void prediction_due_hidesCautionsUntilItIsIn() {
        click(FIRST);
        next();
        openReadings();
        assertTrue(node("cautions-waiting").isVisible());
        assertTrue(item("item-post").isDisable());
        assertTrue(item("item-time-run-down").isDisable());
        assertFalse(robot().lookup(".caution-card").tryQuery().isPresent());
        assertEquals("Coil: what can be measured here is told once you have answered", spoken("part-coil"));

        click("choice-1");
        assertTrue(spoken("part-coil").contains("gets 0"), spoken("part-coil"));
        assertFalse(node("cautions-waiting").isVisible());
        assertTrue(robot().lookup(".caution-card").tryQuery().isPresent());
        assertFalse(item("item-post").isDisable());
    }

    @Test
    void progress_leftHalfWay_goesOnThereAndCanBeForgotten() {
        click(FIRST);
        next();
        click("choice-3");
        next();
        click("button-lesson-leave");
        click("tab-lessons");
        assertEquals("Go on at step 3 of 13", text("standing-01-close-the-ring"));

        click(FIRST);
        assertEquals("Step 3 of 13", text("lesson-place"));
        assertTrue(Files.exists(folder().resolve("config").resolve("lessons.json")));
        robot().interact(() -> item("item-lesson-restart").fire());
        settle();
        assertEquals("Step 1 of 13", text("lesson-place"));

        robot().interact(() -> Platform.runLater(item("item-lesson-forget")::fire));
        settle();
        click("lesson-forget-ok_done");
        assertFalse(Files.exists(folder().resolve("config").resolve("lessons.json")));
    }

    private MenuItem item(String id) {
        return MenuItems.item(node("menus"), id);
    }

    private String spoken(String id) {
        return String.valueOf(node(id).queryAccessibleAttribute(AccessibleAttribute.TEXT));
    }

    @Test
    void language_chosenInALesson_renamesTheBenchAtOnce() {
        click(FIRST);
        next();
        click("choice-3");
        assertTrue(spoken("part-fire").toLowerCase(Locale.ROOT).contains("fire button"), spoken("part-fire"));
        robot().interact(() -> item("item-language-de").fire());
        settle();

        assertEquals("Ein Ring mit einer Lücke", text("bench-title"));
        assertTrue(spoken("part-fire").contains("Feuertaster"), spoken("part-fire"));
        assertEquals("Schritt 2 von 13", text("lesson-place"));
        assertFalse(isOff("fire"));
    }

    /** A lesson speaks of its bench as laid out; who has let time run is told so. */
    @Test
    void reading_afterTimeHasPassed_saysToPutTheClockBack() {
        click(FIRST);
        next();
        click("choice-3");
        next();
        read("1");
        assertFalse(robot().lookup("#lesson-step .lesson-note").tryQuery().isPresent());
        robot().interact(() -> ((Button) node("clock-step-on")).fire());
        WaitForAsyncUtils.waitForFxEvents();
        waitUntilTimeHasPassed();
        robot().doubleClickOn("#lesson-number").write("2");
        click("lesson-number-do");

        assertTrue(robot().lookup("#lesson-step .lesson-note").tryQuery().isPresent());
    }

    private void waitUntilTimeHasPassed() {
        try {
            WaitForAsyncUtils.waitFor(
                    30, TimeUnit.SECONDS, () -> text("clock-time").startsWith("0:01"));
        } catch (TimeoutException never) {
            throw new AssertionError(never);
        }
    }

    @Test
    void reset_afterSolution_opensTheStepAgain() {
        click(FIRST);
        next();
        click("choice-1");
        next();
        read("0");
        next();
        // What became of the first answer stands above, so the second may lie below what is seen.
        robot().interact(((ButtonBase) node("choice-2"))::fire);
        robot().interact(((ButtonBase) node("sure-1"))::fire);
        next();
        click("button-lesson-show");
        click("button-lesson-reset");

        assertTrue(text("lesson-status").startsWith("Not so yet"));
        assertTrue(isOff("button-lesson-next"));
    }
}
