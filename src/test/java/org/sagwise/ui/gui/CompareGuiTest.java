package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCode;

import org.junit.jupiter.api.Test;
import org.sagwise.file.DemoScenarios;
import org.testfx.util.WaitForAsyncUtils;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

/** The bench beside another one. */
class CompareGuiTest extends GuiTest {

    @Test
    void compare_aFaultyBench_standsBesideItsCureInPictureAndWords() throws Exception {
        Path file = folder().resolve("reversed.sagwise.json");
        Files.write(file, DemoScenarios.bytes("side-by-side-one-reversed"));
        open(file.toString());
        compare();
        awaitsWords("turned round in the second");
        assertEquals("Second: Side by side, one cell turned round", text("compare-second-title"));

        work("compare-put");
        assertTrue(isThere("no-caution"));
    }

    @Test
    void compare_aSoundBench_waitsForAnotherToBeChosen() throws Exception {
        open();
        compare();
        awaitsWords("No cure is known or needed");
        assertTrue(node("compare-put").isDisabled());

        MenuButton with = (MenuButton) node("compare-with");
        robot().interact(() -> item(with, "compare-with-this").fire());
        awaitsWords("the same circuit");
        assertFalse(node("compare-put").isDisabled());
    }

    private void compare() {
        robot().push(KeyCode.SHORTCUT, KeyCode.K);
        settle();
    }

    private static MenuItem item(MenuButton menu, String id) {
        return menu.getItems().stream()
                .filter(each -> id.equals(each.getId()))
                .findFirst()
                .orElseThrow();
    }

    private void awaitsWords(String words) throws Exception {
        WaitForAsyncUtils.waitFor(
                20,
                TimeUnit.SECONDS,
                () ->
                        robot().lookup(".block-words .label").queryAllAs(Label.class).stream()
                                .anyMatch(label -> label.getText().contains(words)));
        settle();
    }
}
