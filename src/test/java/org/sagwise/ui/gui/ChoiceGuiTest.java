package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.TimeUnit;
import javafx.scene.control.ComboBox;
import javafx.scene.control.RadioButton;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;

/** Choosing a pack in the window: the wish, the table, and what is opened and compared. */
class ChoiceGuiTest extends GuiTest {

    @Test
    void wish_inOneTube_isAnsweredAndOpensAsABenchOfTheSameWatts() throws Exception {
        open();
        robot().push(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.P);
        settle();
        write("choice-amount", "forty");
        work("choice-do");
        assertFalse(text("choice-amount-error").isEmpty());
        assertFalse(node("choice-do").isDisabled());

        choose("choice-cells", 1);
        choose("choice-format", "18350");
        write("choice-amount", "9 W");
        robot().interact(() -> ((RadioButton) node("choice-presses")).fire());
        write("choice-lasts", "10.5");
        work("choice-do");
        assertTrue(text("choice-lasts-error").startsWith("Say a whole number"), text("choice-lasts-error"));
        write("choice-lasts", "10");
        answered();
        assertTrue(text("choice-answer").startsWith("Best: 1s of"), text("choice-answer"));
        assertEquals(2, table().getItems().size());
        String layout = text("choice-value-layout");

        work("choice-open");
        settle();
        assertTrue(text("bench-title").startsWith("One cell"), text("bench-title"));
        assertTrue(layout.startsWith("1s of"), layout);
        assertFalse(isThere("choice"), "the window makes room for the bench");
        robot().push(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.P);
        settle();
        assertEquals(layout, text("choice-value-layout"), "and comes back as it was");
    }

    @Test
    void wish_thatCannotBe_saysWhyAndTwoCanBeCompared() throws Exception {
        open();
        robot().push(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.P);
        settle();
        choose("choice-cells", 1);
        choose("choice-format", "18350");
        robot().interact(() -> ((RadioButton) node("choice-coil")).fire());
        write("choice-amount", "0.3");
        answered();
        assertTrue(text("choice-answer").startsWith("No layout of these cells feeds a coil"), text("choice-answer"));
        assertTrue(node("choice-compare").isDisabled());

        robot().interact(() -> table().getSelectionModel().selectAll());
        assertFalse(node("choice-compare").isDisabled());
        work("choice-compare");
        assertTrue(isThere("compare"));
    }

    private void answered() throws Exception {
        work("choice-do");
        WaitForAsyncUtils.waitFor(30, TimeUnit.SECONDS, () -> !node("choice-do").isDisabled());
        settle();
    }

    private TableView<?> table() {
        return (TableView<?>) node("choice-table");
    }

    private <T> void choose(String id, T item) {
        @SuppressWarnings("unchecked")
        ComboBox<T> box = (ComboBox<T>) node(id);
        robot().interact(() -> box.setValue(item));
    }

    private void write(String field, String words) {
        robot().interact(() -> ((TextField) node(field)).setText(words));
    }
}
