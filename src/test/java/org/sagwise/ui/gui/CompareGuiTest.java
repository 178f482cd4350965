package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import javafx.scene.control.Label;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ScenarioReader;
import org.sagwise.file.ShareText;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.kit.CopyBoard;
import org.testfx.util.WaitForAsyncUtils;

/** The bench beside another one. */
class CompareGuiTest extends GuiTest {

    @Test
    void compare_aFaultyBench_standsBesideItsCureInPictureAndWords() throws Exception {
        Path file = folder().resolve("reversed.sagwise.json");
        Files.write(file, DemoScenarios.bytes("side-by-side-one-reversed"));
        open(file.toString());
        compare();
        awaitsWords("turned round in the second");
        assertEquals("Second, corrected: Side by side, one cell turned round", text("compare-second-title"));

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

    /** A mistake and its cure are two scenarios: the other one comes from a post or an example. */
    @Test
    void compare_withWhatWasCopiedOrAnExample_showsThat() throws Exception {
        open();
        Scenario series = new ScenarioReader(CatalogueLoader.builtIn())
                .read(DemoScenarios.bytes("two-in-a-row"))
                .scenario()
                .orElseThrow();
        robot().interact(() -> CopyBoard.put(ShareText.of(series).orElseThrow()));
        compare();
        MenuButton with = (MenuButton) node("compare-with");
        robot().interact(() -> item(with, "compare-with-copied").fire());
        awaitsTitle("Second: " + series.title());

        Menu examples = with.getItems().stream()
                .filter(Menu.class::isInstance)
                .map(Menu.class::cast)
                .findFirst()
                .orElseThrow();
        robot().interact(() -> examples.getItems().get(0).fire());
        awaitsTitle("Second: " + examples.getItems().get(0).getText());
    }

    private void awaitsTitle(String title) throws Exception {
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> title.equals(text("compare-second-title")));
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
                () -> robot().lookup(".block-words .label").queryAllAs(Label.class).stream()
                        .anyMatch(label -> label.getText().contains(words)));
        settle();
    }
}
