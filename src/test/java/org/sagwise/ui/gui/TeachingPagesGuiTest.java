package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.TimeUnit;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioButton;
import javafx.scene.control.Spinner;
import javafx.scene.control.TabPane;
import javafx.scene.control.TextArea;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.sagwise.lesson.IdeasCheck;
import org.sagwise.lesson.IdeasCheck.Form;
import org.sagwise.lesson.LearnedCode;
import org.sagwise.ui.MenuItems;
import org.testfx.util.WaitForAsyncUtils;

/** Pages beside the lessons: words, the check of ideas, the gain of a class, the inside of a cell. */
class TeachingPagesGuiTest extends GuiTest {

    @BeforeEach
    void openTheWindow() throws Exception {
        open();
    }

    private void menu(String id) {
        MenuItem item = MenuItems.item(node("menus"), id);
        robot().interact(item::fire);
        settle();
    }

    @Test
    void words_fromTheMenu_areAllThere() {
        menu("item-glossary");

        assertTrue(isThere("glossary-sag"));
        assertTrue(isThere("glossary-vent"));
    }

    /** A word under a text of a lesson leads to the glossary. */
    @Test
    void word_ofALesson_leadsToTheGlossary() throws Exception {
        robot().clickOn("#tab-lessons");
        awaitLesson("lesson-00-hands-on");
        robot().clickOn("#lesson-00-hands-on");
        settle();
        robot().interact(((Button) node("word-coil"))::fire);
        settle();

        assertTrue(isThere("glossary-coil"));
    }

    @Test
    void lookInside_onACellsCard_saysWhatEachPartIsFor() {
        robot().clickOn("#part-A");
        settle();
        robot().clickOn("#tab-card");
        settle();
        robot().interact(((Button) node("card-inside"))::fire);
        settle();
        robot().interact(((Button) node("inside-separator"))::fire);
        settle();

        assertTrue(robot().lookup("Separator").tryQuery().isPresent());
        assertTrue(isThere("inside-picture"));
    }

    @Test
    void check_allRight_showsTwelveIdeas() {
        menu("item-ideas-check");
        int number = 1;
        for (var question : IdeasCheck.questions(Form.A)) {
            RadioButton right = (RadioButton) node("check-A-" + number++ + "-" + (question.right() + 1));
            robot().interact(right::fire);
        }
        robot().interact(((Button) node("check-done-A"))::fire);
        settle();

        assertTrue(robot().lookup("12 of 12 ideas shown").tryQuery().isPresent());
    }

    /** Half of what was missing: 4 of 12 before, 8 of 12 after. */
    @Test
    void gain_ofOneIdea_isToldAsItIsTyped() throws Exception {
        menu("item-ideas-check");
        robot().interact(() ->
                ((TabPane) node("ideas-check")).getSelectionModel().select(2));
        WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> isThere("right-before-1"));
        set("right-before-1", 4);
        set("right-after-1", 8);

        assertEquals("0.50", ((Label) node("gain-1")).getText());
    }

    @Test
    void codes_pasted_areCountedAndWhatIsWrongIsSaid() throws Exception {
        List<Integer> right =
                IdeasCheck.questions(Form.A).stream().map(it -> it.right()).toList();
        String good = LearnedCode.of(Form.A, right, 5).text();
        menu("item-ideas-check");
        robot().interact(() ->
                ((TabPane) node("ideas-check")).getSelectionModel().select(3));
        WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> isThere("class-codes"));

        robot().interact(() -> ((TextArea) node("class-codes")).setText("here: " + good + " and learned1.nothing"));
        settle();
        assertTrue(robot().lookup("One code counted").tryQuery().isPresent());
        assertTrue(robot().lookup((Node it) ->
                        it instanceof Label label && label.getText().startsWith("learned1.nothing: a letter is wrong"))
                .tryQuery()
                .isPresent());

        robot().interact(((Button) node("class-codes-fill"))::fire);
        assertEquals("Now in the tab “Class”: 1 before, 0 after.", ((Label) node("class-codes-said")).getText());
    }

    @SuppressWarnings("unchecked")
    private void set(String id, int value) {
        robot().interact(() -> ((Spinner<Integer>) node(id)).getValueFactory().setValue(value));
        settle();
    }
}
