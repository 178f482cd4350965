package org.sagwise.ui.workbench;

import javafx.scene.control.ButtonBase;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;

/** Lets what a button takes in the hand be dragged from there onto the bench as well. */
public final class DragOut {

    private final Workbench work;
    private final ButtonBase button;
    private boolean dragging;

    private DragOut(Workbench work, ButtonBase button) {
        this.work = work;
        this.button = button;
    }

    /** From now on. */
    public static void of(ButtonBase button, Workbench work) {
        new DragOut(work, button).listen();
    }

    private void listen() {
        button.addEventHandler(MouseEvent.DRAG_DETECTED, this::begin);
        button.addEventHandler(MouseEvent.MOUSE_DRAGGED, this::drag);
        button.addEventFilter(MouseEvent.MOUSE_RELEASED, this::end);
    }

    private void begin(MouseEvent event) {
        if (event.getButton() == MouseButton.PRIMARY) {
            dragging = true;
            button.fire();
            work.ground().handTo(event.getSceneX(), event.getSceneY());
        }
    }

    private void drag(MouseEvent event) {
        if (dragging) {
            work.ground().handTo(event.getSceneX(), event.getSceneY());
        }
    }

    /** Over the bench it is let go; elsewhere it goes back to where it was. */
    private void end(MouseEvent event) {
        if (!dragging) {
            return;
        }
        dragging = false;
        button.disarm();
        event.consume();
        boolean onBench = work.ground().handTo(event.getSceneX(), event.getSceneY());
        if (!onBench || !work.hands().drop()) {
            work.hands().cancel();
        }
    }
}
