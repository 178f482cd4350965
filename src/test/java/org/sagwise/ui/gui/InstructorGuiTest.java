package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.TimeUnit;
import javafx.scene.AccessibleAttribute;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Spinner;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;

/** What an instructor does: choose, jump, count hands, show, freeze, reset, project. */
class InstructorGuiTest extends GuiTest {

    private static final String LESSON = "instructor-lesson-06-same-watts";

    @BeforeEach
    void openTheInstructorsWindow() throws Exception {
        open();
        robot().push(KeyCode.CONTROL, KeyCode.I);
        WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> isThere(LESSON));
        work(LESSON);
    }

    private void count(int answer, String hands) {
        robot().interact(
                        () -> ((Spinner<?>) node("hands-" + answer)).getEditor().setText(hands));
        settle();
    }

    private boolean classSeesChart() {
        return robot().from(node("lesson")).lookup("#tally-chart").tryQuery().isPresent();
    }

    /** 9 of 18 are right: between three and seven in ten. */
    @Test
    void vote_countedAndShown_isSeenByTheClassOnlyThen() {
        count(1, "4");
        count(2, "5");
        count(4, "9");
        assertTrue(text("tally-advice").startsWith("Some are right"));
        assertFalse(classSeesChart());

        work("tally-turn");
        assertTrue(classSeesChart());
        Label figures = robot().from(node("lesson")).lookup("#tally-figures-4").queryAs(Label.class);
        assertEquals("9 (50 %)", figures.getText());

        work("instructor-instructor-reset");
        assertFalse(classSeesChart());
        assertTrue(text("tally-advice").startsWith("Count the hands"));
    }

    /** 9 of 18 before the talk, 14 of 18 after it. */
    @Test
    void secondVote_afterTalking_standsBesideTheFirst() {
        count(1, "4");
        count(2, "5");
        count(4, "9");
        work("tally-again");
        assertTrue(text("tally-advice").startsWith("Count the hands"));
        count(1, "4");
        count(4, "14");
        assertTrue(text("tally-advice").startsWith("More than seven in ten"));

        assertFalse(classSeesChart());
        work("tally-turn");
        assertEquals("9 (50 %)", classFigures("tally-figures-4"));
        assertEquals("14 (78 %)", classFigures("tally-figures-4-again"));
    }

    private String classFigures(String id) {
        return robot().from(node("lesson"))
                .lookup("#" + id)
                .queryAs(Label.class)
                .getText();
    }

    @Test
    void pace_ofALesson_tellsMinutesAndSteps() {
        assertTrue(
                text("instructor-pace-words").contains("of 26 minutes, step 1 of 14."), text("instructor-pace-words"));
    }

    @Test
    void notes_ofAQuestion_areOnTheInstructorsSideAlone() {
        assertEquals("Right is 4: Neither: volts and amps make up for each other", text("instructor-key"));
        assertFalse(robot().from(node("lesson"))
                .lookup("#instructor-key")
                .tryQuery()
                .isPresent());
    }

    @Test
    void jump_toAStep_laysItsBenchOut() {
        work("instructor-step-4");

        assertEquals("Step 4 of 14", text("lesson-place"));
        assertEquals("Two in a row", text("bench-title"));
        work("instructor-lesson-back");
        assertEquals("Step 3 of 14", text("lesson-place"));
    }

    private String spokenBeside() {
        return (String) node("beside").queryAccessibleAttribute(AccessibleAttribute.TEXT);
    }

    /** The lesson's own texts speak of the bench beside; its button goes down with the other. */
    @Test
    void beside_inAStepThatCompares_followsTheButton() {
        assertEquals("Beside: Two in a row", text("beside-title"));
        String asked = spokenBeside();
        work("instructor-instructor-unlock");
        String atRest = spokenBeside();
        robot().interact(() -> ((ToggleButton) node("latch")).fire());
        settle();
        String firing = spokenBeside();

        assertFalse(asked.contains(" W"), asked);
        assertTrue(atRest.contains("0.00 W"), atRest);
        assertTrue(firing.contains("17.6 W"), firing);
        work("instructor-lesson-01-close-the-ring");
        assertFalse(node("beside").isVisible());
    }

    /** The pair is ideal in all its parts: neither may last longer than the other. */
    @Test
    void besideRunDown_onOneClock_endsWithTheOther() throws Exception {
        work("instructor-step-8");
        assertFalse(node("together").isVisible());
        assertTrue(node("beside-staircase").isVisible());
        robot().interact(() -> ((Button) node("clock-run-down")).fire());
        WaitForAsyncUtils.waitFor(
                60, TimeUnit.SECONDS, () -> text("together-second").contains("at its end"));

        String end = text("together-second").substring("Beside: ".length());
        assertEquals("Here: " + end, text("together-first"));
        assertTrue(end.matches("at its end at \\d+:\\d\\d:\\d\\d, button held for .*"), end);
    }

    @Test
    void unlock_beforeAPrediction_letsTheButtonBeUsed() {
        assertTrue(node("fire").isDisabled());
        work("instructor-instructor-unlock");

        assertFalse(node("fire").isDisabled());
    }

    @Test
    void freeze_whileFiring_keepsTheButtonDownUntilThawed() {
        work("instructor-instructor-unlock");
        robot().interact(() -> node("fire").getScene().getWindow().requestFocus());
        robot().press(KeyCode.SPACE);
        settle();
        freezeByKeys();
        robot().release(KeyCode.SPACE);
        settle();
        assertEquals("Firing", text("fire-state"));

        robot().interact(() -> ((Button) node("instructor-instructor-freeze")).fire());
        settle();
        assertEquals("Button open", text("fire-state"));
    }

    @Test
    void projector_turnedOn_leavesBenchStairsAndLesson() {
        work("instructor-lesson-01-close-the-ring");
        robot().interact(() -> node("fire").getScene().getWindow().requestFocus());
        assertFalse(isThere("side"), "the lesson and the bench come first");
        openReadings();
        assertTrue(isThere("side"));
        robot().push(KeyCode.F12);
        settle();

        assertFalse(isThere("side"));
        assertTrue(isThere("lesson"));
        robot().push(KeyCode.F12);
        settle();
        assertTrue(isThere("side"));
    }

    private double letters(String id) {
        return ((Label) node(id)).getFont().getSize();
    }

    private boolean isShown(String id) {
        return node(id).isVisible() && node(id).getParent().isVisible();
    }

    /** The class reads from far away; who leads reads notes and counts hands near by. */
    @Test
    void projector_fromTheInstructorsWindow_enlargesOnlyWhatTheClassSees() {
        double near = letters("instructor-pace-words");
        double far = letters("lesson-place");
        assertTrue(isShown("button-lesson-show"));

        work("instructor-projector");
        assertEquals(near, letters("instructor-pace-words"), 0.01);
        assertTrue(letters("lesson-place") > far * 1.2);
        assertFalse(isShown("button-lesson-show"));
        assertTrue(isShown("instructor-lesson-show"));

        work("instructor-projector");
        assertEquals(far, letters("lesson-place"), 0.01);
        assertTrue(isShown("button-lesson-show"));
    }

    /** The instructor's window has no menus, and yet its keys work. */
    private void freezeByKeys() {
        robot().interact(() -> ((Stage) node("instructor").getScene().getWindow()).toFront());
        robot().interact(() -> node("instructor-instructor-freeze").requestFocus());
        robot().push(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.F);
        settle();
    }
}
