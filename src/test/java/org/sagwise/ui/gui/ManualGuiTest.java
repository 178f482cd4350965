package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.scene.control.Hyperlink;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

/** The manual, from inside and without a network. */
class ManualGuiTest extends GuiTest {

    @Test
    void f1_opensTheManualWithPicturesAndWaysToItsChapters() throws Exception {
        openIn("de");
        robot().push(KeyCode.F1);
        settle();
        ScrollPane manual = (ScrollPane) node("manual");
        assertTrue(manual.getContent().lookupAll(".image-view").stream()
                .allMatch(picture -> ((ImageView) picture).getImage() != null));
        Hyperlink last = robot().lookup(".manual-chapters .hyperlink").queryAllAs(Hyperlink.class).stream()
                .reduce((one, next) -> next)
                .orElseThrow();
        assertEquals("Was oft gefragt wird", last.getText());
        robot().interact(last::fire);
        assertTrue(manual.getVvalue() > 0.5, "at " + manual.getVvalue());

        robot().push(KeyCode.ESCAPE);
        settle();
        assertTrue(!isThere("manual"));
    }

    @Test
    void undo_tellsWhatItTookBack() throws Exception {
        open();
        robot().clickOn("#part-B").push(KeyCode.R);
        settle();
        robot().push(KeyCode.CONTROL, KeyCode.Z);
        settle();
        assertTrue(text("status-line").startsWith("Undone: "), text("status-line"));
        robot().push(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.Z);
        settle();
        assertTrue(text("status-line").startsWith("Done again: "), text("status-line"));
    }
}
