package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import javafx.scene.control.Button;
import javafx.scene.control.MenuBar;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.sagwise.file.DemoScenarios;
import org.testfx.util.WaitForAsyncUtils;

/** A caution that knows a cure makes it, as one edit with a name. */
class CureGuiTest extends GuiTest {

    private static final String CURE = "cure-reversed-in-parallel-turn";

    @Test
    void cure_aReversedCell_isTurnedByOneEditThatCanBeUndone() throws Exception {
        openReversed();
        awaits(CURE);
        assertEquals("Turn cell B", ((Button) node(CURE)).getText());

        work(CURE);
        assertFalse(node("danger-strip").isVisible());
        assertTrue(isThere("no-caution"));
        assertEquals("_Undo: Turn cell B", undo());

        robot().push(KeyCode.SHORTCUT, KeyCode.Z);
        settle();
        assertTrue(node("danger-strip").isVisible());
        awaits(CURE);
    }

    @Test
    void cure_beforeItIsMade_saysWhatItWouldChange() throws Exception {
        openReversed();
        awaits("strip-cure");

        String said = node("strip-cure").getAccessibleText();
        assertTrue(said.startsWith("Turn cell B. It would change: Cautions: DANGER"), said);
        assertTrue(said.contains("→ none left"), said);
    }

    private void openReversed() throws Exception {
        Path file = folder().resolve("reversed.sagwise.json");
        Files.write(file, DemoScenarios.bytes("side-by-side-one-reversed"));
        open(file.toString());
    }

    private void awaits(String id) throws Exception {
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> isThere(id));
    }

    private String undo() {
        return ((MenuBar) node("menus"))
                .getMenus().stream()
                        .flatMap(menu -> menu.getItems().stream())
                        .filter(item -> "item-undo".equals(item.getId()))
                        .findFirst()
                        .orElseThrow()
                        .getText();
    }
}
