package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Who has missed an idea in the first lesson is asked again before the second one. */
class RecallGuiTest extends GuiTest {

    private static final int STEPS = 13;
    private static final int OPEN_BUTTON = 3;

    @BeforeEach
    void openTheWindowOfSomebodyWhoMissedTheOpenButton() throws Exception {
        Path config = Files.createDirectories(folder().resolve("config"));
        String answers = Stream.iterate(0, step -> step + 1)
                .limit(STEPS)
                .map(step -> step == OPEN_BUTTON
                        ? "{\"state\": \"done\", \"choice\": 0}"
                        : step == 1 ? "{\"state\": \"done\", \"choice\": 2}" : "{\"state\": \"done\"}")
                .collect(Collectors.joining(", "));
        Files.writeString(
                config.resolve("lessons.json"),
                "{\"sagwise_progress\": 1, \"lessons\": {\"01-close-the-ring\": {\"reached\": 12, \"answers\": ["
                        + answers + "]}}}");
        open();
        robot().clickOn("#tab-lessons");
        awaitLesson("lesson-02-same-amps-all-round");
        robot().clickOn("#lesson-02-same-amps-all-round");
        settle();
    }

    @Test
    void lesson_begun_asksTwoQuestionsAndThenBegins() {
        assertEquals("Before the lesson: question 1 of 2", text("lesson-place"));
        assertFalse(node("button-lesson-next").isDisabled(), "a question may be skipped");
        assertTrue(node("button-lesson-show").isDisabled());
        robot().clickOn("#choice-1");
        settle();
        assertTrue(isThere("lesson-recall-show"));

        robot().clickOn("#button-lesson-next");
        settle();
        assertEquals("Before the lesson: question 2 of 2", text("lesson-place"));
        robot().clickOn("#button-lesson-next");
        settle();
        assertEquals("Step 1 of 14", text("lesson-place"));
    }

    @Test
    void miss_shownOnTheBench_leadsToTheStepThatShowsIt() {
        robot().clickOn("#choice-1");
        settle();
        robot().interact(() -> ((javafx.scene.control.Button) node("lesson-recall-show")).fire());
        settle();

        assertEquals("Close the ring", text("lesson-title"));
        assertEquals("Step 4 of 13", text("lesson-place"));
    }
}
