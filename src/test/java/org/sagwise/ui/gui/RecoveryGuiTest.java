package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.sagwise.file.DemoScenarios;
import org.testfx.util.WaitForAsyncUtils;

/** What was not saved is there again after the program was killed. */
class RecoveryGuiTest extends GuiTest {

    /** No system gives numbers as large as this to processes. */
    private static final String KILLED = "unsaved-999999999999.sagwise.json";

    private Path config() {
        return folder().resolve("config");
    }

    private List<Path> kept() throws IOException {
        try (Stream<Path> files = Files.list(config())) {
            return files.filter(f -> f.getFileName().toString().startsWith("unsaved-"))
                    .toList();
        }
    }

    private void waitUntilKept(int count) throws TimeoutException {
        WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> kept().size() == count);
    }

    @Test
    void start_afterAKill_offersWhatWasNotSaved() throws Exception {
        Files.createDirectories(config());
        Files.write(config().resolve(KILLED), DemoScenarios.bytes("two-by-two"));
        open();
        assertTrue(isThere("recovery-dialog"));

        robot().clickOn("#recovery-dialog-ok_done");
        settle();
        assertTrue(isThere("part-D"));
        assertTrue(text("bench-file").contains("not saved"), text("bench-file"));
        waitUntilKept(1);
        assertFalse(Files.exists(config().resolve(KILLED)));
    }

    @Test
    void secondOfTwo_wherePersonStaysWithTheFirst_isKeptForTheNextStart() throws Exception {
        Path second = config().resolve("unsaved-999999999998.sagwise.json");
        Files.createDirectories(config());
        Files.write(config().resolve(KILLED), DemoScenarios.bytes("two-in-a-row"));
        Files.write(second, DemoScenarios.bytes("two-by-two"));
        open();
        robot().clickOn("#recovery-dialog-ok_done");
        settle();
        assertTrue(isThere("recovery-dialog"));
        robot().clickOn("#recovery-dialog-ok_done");
        settle();
        robot().push(KeyCode.ESCAPE);
        settle();

        // Left are the own file of the one that was brought back, and the one that was not.
        waitUntilKept(2);
        assertEquals(
                1,
                kept().stream()
                        .filter(List.of(second, config().resolve(KILLED))::contains)
                        .count());
    }

    @Test
    void edit_isKeptUntilItIsUndone() throws Exception {
        open();
        assertEquals(0, kept().size());
        robot().clickOn("#part-B").push(KeyCode.DELETE);
        settle();
        waitUntilKept(1);

        robot().push(KeyCode.CONTROL, KeyCode.Z);
        settle();
        waitUntilKept(0);
    }
}
