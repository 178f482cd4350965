package org.sagwise.ui.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.sagwise.picture.geometry.Box;

/** What is seen of a bench when its room changes. */
class ViewModelTest {

    private static final Box ALL = new Box(0, 0, 400, 200);
    private static final Box THINGS = new Box(100, 20, 200, 160);

    private final ViewModel view = new ViewModel();

    private void open() {
        view.show(ALL, THINGS);
        view.resize(800, 400);
        view.hold();
    }

    @Test
    void resize_heldAndSeenWhole_isSeenWholeInLessRoomToo() {
        open();
        view.resize(800, 250);
        assertTrue(view.shows(THINGS));
    }

    @Test
    void resize_heldAndLookedAtCloser_staysAsNear() {
        open();
        view.zoom(4, 400, 200);
        double scale = view.get().scale();
        view.resize(800, 250);
        assertFalse(view.shows(THINGS));
        assertEquals(scale, view.get().scale(), 1e-9);
    }
}
