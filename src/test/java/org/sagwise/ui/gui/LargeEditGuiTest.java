package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.Test;
import org.sagwise.file.ScenarioFiles;
import org.sagwise.fixture.Packs;
import org.sagwise.ui.MenuItems;
import org.testfx.util.WaitForAsyncUtils;

/** Changes of a bench that takes long to be set out. */
class LargeEditGuiTest extends GuiTest {

    /** What is seen meanwhile is marked as the bench before, and then it is the bench that lies there. */
    @Test
    void turn_aCellOfALargeBench_isSetOutBesideTheWindow() throws Exception {
        openLarge();
        double wide = width("part-c0-0");

        robot().interact(() -> {
            turn();
            assertTrue(node("bench-working").isVisible());
            assertTrue(text("bench-working").contains("142 parts"), text("bench-working"));
            assertEquals(wide, width("part-c0-0"));
        });

        await(() -> !node("bench-working").isVisible());
        assertFalse(width("part-c0-0") == wide);
        assertTrue(node("part-c0-0").isFocused());
    }

    /** Taken back at once, the bench before is the one that lies there. */
    @Test
    void undo_whileSetOut_marksNothingAnyMore() throws Exception {
        openLarge();
        double wide = width("part-c0-0");
        robot().interact(() -> {
            turn();
            undo();
            assertFalse(node("bench-working").isVisible());
        });
        settle();
        assertEquals(wide, width("part-c0-0"));
    }

    private void openLarge() throws Exception {
        Path file = folder().resolve("large.sagwise.json");
        ScenarioFiles.save(file, Packs.of(14, 10).released());
        open(file.toString());
        await(() -> isThere("part-c0-0"));
    }

    private void turn() {
        node("part-c0-0").requestFocus();
        node("part-c0-0").fireEvent(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.R, false, false, false, false));
    }

    private void undo() {
        MenuItems.item(node("menus"), "item-undo").fire();
    }

    private void await(Callable<Boolean> condition) throws TimeoutException {
        WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS, condition);
        settle();
    }

    private double width(String id) {
        return node(id).getBoundsInParent().getWidth();
    }
}
