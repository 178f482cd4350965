package org.sagwise.ui.share;

import javafx.event.EventHandler;
import javafx.scene.Scene;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import org.sagwise.file.ShareText;
import org.sagwise.ui.kit.CopyBoard;
import org.sagwise.ui.kit.Subscriptions;

/**
 * Lets share text be pasted wherever the focus is. A field of text would take it for its own, and
 * no field wants one.
 */
public final class PasteAnywhere {

    private static final KeyCombination PASTE = KeyCombination.valueOf("Shortcut+V");

    private PasteAnywhere() {}

    /**
     * @param subscriptions closed when the scene is built anew
     */
    public static void in(Scene scene, ShareDesk desk, Subscriptions subscriptions) {
        EventHandler<KeyEvent> filter = event -> {
            if (PASTE.match(event)
                    && scene.getFocusOwner() instanceof TextInputControl
                    && CopyBoard.text().filter(ShareText::isIn).isPresent()) {
                event.consume();
                desk.paste();
            }
        };
        scene.addEventFilter(KeyEvent.KEY_PRESSED, filter);
        subscriptions.add(() -> scene.removeEventFilter(KeyEvent.KEY_PRESSED, filter));
    }
}
