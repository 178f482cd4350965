package org.sagwise.ui.document;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.sagwise.ui.document.FireButtonState.Hold;

class FireButtonStateTest {

    private final FireButtonState thumb = new FireButtonState();

    @Test
    void release_whileSomethingElseHolds_staysDown() {
        thumb.press(Hold.MOUSE);
        thumb.press(Hold.KEY);
        thumb.release(Hold.MOUSE);
        assertTrue(thumb.isDown());

        thumb.release(Hold.KEY);
        assertFalse(thumb.isDown());
    }

    @Test
    void press_repeatedByTheKeyboard_isReleasedOnce() {
        thumb.press(Hold.KEY);
        thumb.press(Hold.KEY);
        thumb.release(Hold.KEY);

        assertFalse(thumb.isDown());
    }

    @Test
    void letGo_withLatch_staysDown() {
        thumb.toggleLatch();
        thumb.press(Hold.KEY);
        thumb.letGo();

        assertTrue(thumb.isDown());
        assertTrue(thumb.latchedProperty().get());
    }

    @Test
    void start_anotherDocument_forgetsAllHolds() {
        thumb.press(Hold.MOUSE);
        thumb.start(false);
        assertFalse(thumb.isDown());

        thumb.start(true);
        assertTrue(thumb.latchedProperty().get());
    }
}
