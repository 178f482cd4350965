package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javafx.scene.control.ToggleButton;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;

/** Answers in whatever order chance puts them: nothing here depends on which one it is. */
class ShuffleGuiTest extends GuiTest {

    private static final String LESSON = "lesson-06-same-watts";
    private static final String RIGHT = "Neither: volts and amps make up for each other";

    @BeforeEach
    void openTheLesson() throws Exception {
        openWith("{\"notice_read\": 1000, \"language\": \"en\", \"looks\": \"light\"," + " \"answers\": \"shuffled\"}");
        robot().clickOn("#tab-lessons");
        WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> isThere(LESSON));
        work(LESSON);
    }

    private List<String> answers() {
        return IntStream.rangeClosed(1, 4)
                .mapToObj(number -> node("choice-" + number).getAccessibleText().substring(3))
                .toList();
    }

    private int placeOf(String answer) {
        return answers().indexOf(answer) + 1;
    }

    @Test
    void answers_shuffled_areAllThereAndStayWhereTheyAre() {
        List<String> before = answers();
        assertEquals(
                Set.of(
                        "The row: it has more volts",
                        "Side by side: it has more amps",
                        "Side by side: parallel is stronger",
                        RIGHT),
                before.stream().collect(Collectors.toSet()));

        work("choice-" + placeOf(RIGHT));
        work("button-lesson-leave");
        robot().clickOn("#tab-lessons");
        settle();
        work(LESSON);
        assertEquals(before, answers());
    }

    private void read(String number) {
        ToggleButton latch = (ToggleButton) node("latch");
        robot().interact(latch::fire);
        robot().interact(latch::fire);
        robot().clickOn("#lesson-number").write(number);
        work("lesson-number-do");
    }

    @Test
    void answer_chosen_isTheOneThatIsShown() {
        work("choice-" + placeOf(RIGHT));
        work("sure-2");
        work("button-lesson-next");
        work("choice-1");
        work("button-lesson-next");
        read("17.64");
        work("button-lesson-next");
        read("17.64");
        work("button-lesson-next");
        read("2.1");
        work("button-lesson-next");

        assertTrue(robot().lookup(".verdict-met").tryQuery().isPresent());
    }
}
