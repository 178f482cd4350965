package org.sagwise.ui.bench;

import javafx.event.EventHandler;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import org.sagwise.ui.document.FireButtonState;
import org.sagwise.ui.kit.Subscriptions;

/**
 * Makes the space bar hold the fire button, wherever the focus is, except where it types a space.
 *
 * <p>Buttons are worked by Enter. Somebody who clicked on one and then holds the space bar, as the
 * window says, means to fire.
 */
public final class SpaceBar {

    /** Style class of a field for one number, where the space bar fires as everywhere else. */
    public static final String NUMBER_FIELD = "number-field";

    private SpaceBar() {}

    /** Listens for it in a window, until the subscriptions are closed. */
    public static void holds(FireButtonState thumb, Stage stage, Subscriptions subscriptions) {
        Scene scene = stage.getScene();
        var filter = filter(thumb, scene);
        scene.addEventFilter(KeyEvent.ANY, filter);
        subscriptions.add(() -> scene.removeEventFilter(KeyEvent.ANY, filter));
        // A key that is let go in another window is never heard of here.
        subscriptions.onChange(stage.focusedProperty(), thumb::letGo);
    }

    private static EventHandler<KeyEvent> filter(FireButtonState thumb, Scene scene) {
        return event -> {
            if (isSpace(event) && !isTyping(scene.getFocusOwner())) {
                hold(thumb, event);
                event.consume();
            }
        };
    }

    private static void hold(FireButtonState thumb, KeyEvent event) {
        if (event.getEventType() == KeyEvent.KEY_PRESSED) {
            thumb.press(FireButtonState.Hold.KEY);
        } else if (event.getEventType() == KeyEvent.KEY_RELEASED) {
            thumb.release(FireButtonState.Hold.KEY);
        }
    }

    private static boolean isSpace(KeyEvent event) {
        boolean plain = !event.isShortcutDown() && !event.isAltDown() && !event.isControlDown();
        return event.getEventType() == KeyEvent.KEY_TYPED
                ? plain && " ".equals(event.getCharacter())
                : event.getCode() == KeyCode.SPACE && (plain || event.getEventType() == KeyEvent.KEY_RELEASED);
    }

    private static boolean isTyping(Node focused) {
        return focused instanceof TextInputControl text
                && text.isEditable()
                && !text.getStyleClass().contains(NUMBER_FIELD);
    }
}
