package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.scene.Node;
import org.junit.jupiter.api.Test;

/** Somebody who has never seen the program is shown three doors, and nobody else. */
class StartPageGuiTest extends GuiTest {

    @Test
    void firstStart_afterTheNotice_opensOnThreeDoors() throws Exception {
        openWith("{\"language\": \"en\", \"looks\": \"light\"}");
        robot().clickOn("#first-notice-ok_done");
        settle();
        assertTrue(isThere("doors-dialog"));

        robot().clickOn("#door-build");
        settle();
        assertFalse(isThere("doors-dialog"));
        assertEquals("Bench without a title", text("bench-title"));
        assertTrue(isThere("shelf-search"));
    }

    /** From there a lesson begins with one key. */
    @Test
    void doorToLearn_opened_standsAtTheFirstLesson() throws Exception {
        openWith("{\"language\": \"en\", \"looks\": \"light\"}");
        robot().clickOn("#first-notice-ok_done");
        settle();
        robot().clickOn("#door-learn");
        awaitLesson("lesson-00-hands-on");

        Node first = node("lesson-00-hands-on");
        assertSame(first, first.getScene().getFocusOwner());
    }

    @Test
    void laterStart_goesStraightToTheBench() throws Exception {
        open();
        assertFalse(isThere("doors-dialog"));
    }
}
