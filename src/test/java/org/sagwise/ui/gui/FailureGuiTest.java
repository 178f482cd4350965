package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.logging.Logger;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.sagwise.ui.shell.FailureReport;
import org.testfx.util.WaitForAsyncUtils;

/** What a person sees when the program itself fails. */
class FailureGuiTest extends GuiTest {

    @Test
    void failure_again_isToldOnceAndLeavesTheBench() throws Exception {
        open();
        Logger log = Logger.getLogger(FailureReport.class.getName());
        log.setFilter(record -> false);
        Thread.UncaughtExceptionHandler handler = WaitForAsyncUtils.waitForAsyncFx(
                5000, () -> Thread.currentThread().getUncaughtExceptionHandler());
        handler.uncaughtException(Thread.currentThread(), new IllegalStateException("planted"));
        handler.uncaughtException(Thread.currentThread(), new IllegalStateException("planted"));
        settle();
        assertTrue(isThere("failure"));

        robot().push(KeyCode.ESCAPE);
        settle();
        assertFalse(isThere("failure"));
        assertEquals("Two cells side by side", text("bench-title"));
        log.setFilter(null);
    }
}
