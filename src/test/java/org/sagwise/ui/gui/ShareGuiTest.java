package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;

import org.junit.jupiter.api.Test;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ScenarioReader;
import org.sagwise.file.ShareText;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.share.CopyBoard;

import java.util.concurrent.atomic.AtomicReference;

/** A bench goes out as text, and comes in as text, wherever the focus is. */
class ShareGuiTest extends GuiTest {

    @Test
    void paste_aPostWithShareText_opensIt() throws Exception {
        open();
        copy("Mine gets hot:\n" + shared("two-by-two") + "\nAny idea?");
        robot().push(KeyCode.SHORTCUT, KeyCode.V);
        settle();

        assertEquals("Two rows of two", text("bench-title"));
    }

    @Test
    void paste_clippedShareText_isRefusedInWords() throws Exception {
        open();
        copy(shared("two-by-two").substring(0, 120));
        robot().push(KeyCode.SHORTCUT, KeyCode.V);
        settle();
        assertTrue(isThere("paste-troubles"));
        Label trouble = robot().lookup(".trouble-text").query();
        assertTrue(trouble.getText().contains("clipped"), trouble.getText());

        robot().push(KeyCode.ESCAPE);
        settle();
        assertFalse(isThere("paste-troubles"));
        assertEquals("Two cells side by side", text("bench-title"));
    }

    @Test
    void share_theBench_isCopiedAsTextThatOpensAgain() throws Exception {
        open();
        robot().push(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.C);
        settle();

        Scenario back =
                ShareText.read(copied(), new ScenarioReader(CatalogueLoader.builtIn()))
                        .scenario()
                        .orElseThrow();
        assertEquals("Two cells side by side", back.title());
    }

    private String shared(String demo) {
        Scenario scenario =
                new ScenarioReader(CatalogueLoader.builtIn())
                        .read(DemoScenarios.bytes(demo))
                        .scenario()
                        .orElseThrow();
        return ShareText.of(scenario).orElseThrow();
    }

    private void copy(String text) {
        robot().interact(() -> CopyBoard.put(text));
    }

    private String copied() {
        AtomicReference<String> text = new AtomicReference<>();
        robot().interact(() -> text.set(CopyBoard.text().orElse("")));
        return text.get();
    }
}
