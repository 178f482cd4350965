package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

/** From a line of words to a bench, with the keyboard alone. */
class WordsGuiTest extends GuiTest {

    @Test
    void line_thatSaysABench_isPutOnIt() throws Exception {
        open();
        robot().push(KeyCode.SHORTCUT, KeyCode.ALT, KeyCode.N);
        settle();
        assertTrue(node("words-put").isDisabled());
        write("2p inr18650-2500-20A at 4.15 V; coil 0.5");
        assertTrue(said().contains("A sound push button."), said());

        robot().push(KeyCode.ENTER);
        settle();

        assertEquals("2P on 0.50 Ω", text("bench-title"));
        assertFalse(isThere("words"));
    }

    @Test
    void line_withAMistake_saysWhereAndMarksIt() throws Exception {
        open();
        robot().push(KeyCode.SHORTCUT, KeyCode.ALT, KeyCode.N);
        settle();
        write("2 cells 2500 mAh 20 A; coil 0.5 ohn");

        assertTrue(said().contains("Column 1: 2 cells side by side (2p) or in a row (2s)?"), said());
        assertTrue(node("words-put").isDisabled());
        robot().push(KeyCode.ENTER);
        assertTrue(isThere("words"));
        robot().push(KeyCode.TAB);
        robot().push(KeyCode.TAB);
        robot().push(KeyCode.SPACE);
        settle();
        assertEquals("ohn", line().getSelectedText());
    }

    private TextArea line() {
        return (TextArea) node("words-line");
    }

    private void write(String words) {
        robot().interact(() -> line().setText(words));
        settle();
    }

    private String said() {
        StringBuilder said = new StringBuilder();
        ((Parent) node("words-answer"))
                .getChildrenUnmodifiable()
                .forEach(each -> said.append(((Labeled) each).getText()).append('\n'));
        return said.toString();
    }
}
