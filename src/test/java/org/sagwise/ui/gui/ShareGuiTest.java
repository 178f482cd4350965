package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ScenarioFiles;
import org.sagwise.file.ScenarioReader;
import org.sagwise.file.ShareText;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.kit.CopyBoard;
import org.testfx.util.WaitForAsyncUtils;

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

        Scenario back = ShareText.read(copied(), new ScenarioReader(CatalogueLoader.builtIn()))
                .scenario()
                .orElseThrow();
        assertEquals("Two cells side by side", back.title());
    }

    @Test
    void post_inEveryFormat_isWrittenShownAndCopied() throws Exception {
        open();
        robot().push(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.E);
        settle();
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> preview().startsWith("# "));

        work("post-bbcode");
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> preview().startsWith("[b]"));
        work("post-copy");
        assertTrue(copied().contains("sagwise1:"), copied());

        work("post-html");
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> !preview().startsWith("[b]"));
        work("post-copy");
        assertTrue(copied().contains("<svg"), "pictures are in the file");
    }

    /** The QR code beside the post is a picture that can be copied. */
    @Test
    void post_ofASmallBench_offersAQrCode() throws Exception {
        open();
        robot().push(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.E);
        settle();
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> node("qr-picture").isVisible());
        work("qr-copy");
        assertTrue(text("qr-state").startsWith("Copied"), text("qr-state"));
        assertFalse(isThere("post-moment-clock"), "the clock has not run");
    }

    @Test
    void post_ofABenchWithALongDescription_saysWhyThereIsNoQrCode() throws Exception {
        Scenario small = new ScenarioReader(CatalogueLoader.builtIn())
                .read(DemoScenarios.bytes("two-in-a-row"))
                .scenario()
                .orElseThrow();
        StringBuilder about = new StringBuilder();
        new Random(7).ints(4_000, 'a', 'z').forEach(about::appendCodePoint);
        Path file = folder().resolve("long.sagwise.json");
        ScenarioFiles.save(file, small.withAbout(about.toString()));
        open(file.toString());
        robot().push(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.E);
        settle();
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> text("qr-state").startsWith("No QR code"));
        assertFalse(node("qr-picture").isVisible());
    }

    /** Once time has passed, a post tells the start or what the clock shows, and says which. */
    @Test
    void post_onceTimeHasPassed_offersTheClocksMoment() throws Exception {
        open();
        robot().push(KeyCode.F7);
        WaitForAsyncUtils.waitFor(
                20, TimeUnit.SECONDS, () -> !text("clock-time").startsWith("0:00"));
        robot().push(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.E);
        settle();
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> preview().startsWith("# "));
        assertFalse(preview().contains("after the start"), preview());
        work("post-moment-clock");
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> preview().contains("1 s after the start"));
    }

    @Test
    void picture_ofTheSchematic_isPaintedInTheSizeChosen() throws Exception {
        open();
        robot().push(KeyCode.SHORTCUT, KeyCode.E);
        settle();
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> painted() == 1200);

        work("picture-drawing-schematic");
        work("picture-size-1920");
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> painted() == 1920);
    }

    private String preview() {
        return ((TextArea) node("post-preview")).getText();
    }

    private double painted() {
        Image image = ((ImageView) node("picture-preview")).getImage();
        return image == null ? 0 : image.getWidth();
    }

    private String shared(String demo) {
        Scenario scenario = new ScenarioReader(CatalogueLoader.builtIn())
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
