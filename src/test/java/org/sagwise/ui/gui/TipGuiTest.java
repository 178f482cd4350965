package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.Optional;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.event.Event;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.input.MouseEvent;
import org.junit.jupiter.api.Test;
import org.sagwise.ui.kit.Tip;

/** Words that are made when a pointer comes. */
class TipGuiTest extends GuiTest {

    /** Where JavaFX keeps the tooltip of a node that is no control. */
    private static final String INSTALLED = "javafx.scene.control.Tooltip";

    @Test
    void put_beforeAPointerComes_makesNoTooltip() throws Exception {
        open();
        Label label = shown();
        robot().interact(() -> Tip.put(label, "what it is"));

        assertNull(label.getProperties().get(INSTALLED));
        assertEquals("what it is", label.getAccessibleHelp());
        point(label);
        assertNotNull(label.getProperties().get(INSTALLED));
    }

    @Test
    void words_ofAValue_followItWhileTheyAreRead() throws Exception {
        open();
        Label label = shown();
        StringProperty words = new SimpleStringProperty("3.6 V");
        robot().interact(() -> Tip.put(label, words));

        assertEquals("3.6 V", read(label));
        robot().interact(() -> words.set("3.5 V"));
        assertEquals("3.5 V", ((Tooltip) label.getProperties().get(INSTALLED)).getText());
    }

    @Test
    void words_putAnew_takeThePlaceOfTheOld() throws Exception {
        open();
        Label label = shown();
        robot().interact(() -> Tip.put(label, "old"));
        robot().interact(() -> Tip.put(label, "new"));

        assertEquals("new", read(label));
        assertEquals("new", label.getAccessibleHelp());
        assertEquals(Optional.of("new"), Tip.of(label));
    }

    @Test
    void words_thatAreBlank_bringNoEmptyBox() throws Exception {
        open();
        Label label = shown();
        robot().interact(() -> Tip.put(label, "a file"));
        point(label);
        robot().interact(() -> Tip.put(label, ""));
        point(label);

        assertNull(label.getProperties().get(INSTALLED));
    }

    /** A label of the window, for whatever node will do. */
    private Label shown() {
        return (Label) node("status-line");
    }

    private void point(Label label) {
        robot().interact(() -> Event.fireEvent(
                label,
                new MouseEvent(
                        MouseEvent.MOUSE_ENTERED,
                        0,
                        0,
                        0,
                        0,
                        null,
                        0,
                        false,
                        false,
                        false,
                        false,
                        false,
                        false,
                        false,
                        false,
                        false,
                        false,
                        null)));
    }

    private String read(Label label) {
        point(label);
        Tooltip tooltip = (Tooltip) label.getProperties().get(INSTALLED);
        robot().interact(() -> tooltip.show(label, 0, 0));
        return tooltip.getText();
    }
}
