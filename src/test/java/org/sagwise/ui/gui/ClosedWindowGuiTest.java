package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.ref.WeakReference;
import java.util.concurrent.TimeUnit;
import javafx.scene.Node;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;

/** A window that was closed is gone: nothing in it goes on, and its memory is free. */
class ClosedWindowGuiTest extends GuiTest {

    @Test
    void window_closedAndAnotherOpened_isForgotten() throws Exception {
        open();
        WeakReference<Node> bench = new WeakReference<>(node("bench"));
        closeWindow();
        openToolkit();
        open();

        WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> {
            System.gc();
            settle();
            return bench.refersTo(null);
        });
        assertTrue(bench.refersTo(null));
    }
}
