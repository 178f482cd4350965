package org.sagwise.ui.bench;

import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.StackPane;
import org.sagwise.ui.document.FireButtonState;
import org.sagwise.ui.kit.Tip;

/**
 * A round button that does something for as long as it is held.
 *
 * <p>An ordinary button acts once, when it is let go; this one presses and releases. A screen
 * reader, which cannot hold, works the latch instead.
 */
final class FireButton extends StackPane {

    private final FireButtonState thumb;

    FireButton(FireButtonState thumb, String word) {
        this.thumb = thumb;
        Label label = new Label(word);
        label.getStyleClass().add("fire-button-word");
        getChildren().add(label);
        getStyleClass().add("fire-button");
        setId("fire");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.TOGGLE_BUTTON);
        addEventHandler(MouseEvent.MOUSE_PRESSED, this::pressed);
        addEventHandler(MouseEvent.MOUSE_RELEASED, event -> thumb.release(FireButtonState.Hold.MOUSE));
        addEventHandler(KeyEvent.KEY_PRESSED, this::keyPressed);
    }

    void explain(String tip) {
        Tip.put(this, tip);
        setAccessibleHelp(tip);
    }

    private void pressed(MouseEvent event) {
        if (event.getButton() == MouseButton.PRIMARY) {
            requestFocus();
            thumb.press(FireButtonState.Hold.MOUSE);
            event.consume();
        }
    }

    private void keyPressed(KeyEvent event) {
        if (event.getCode() == KeyCode.ENTER) {
            thumb.toggleLatch();
            event.consume();
        }
    }

    @Override
    public Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
        return attribute == AccessibleAttribute.SELECTED
                ? (Object) thumb.isDown()
                : super.queryAccessibleAttribute(attribute, parameters);
    }

    @Override
    public void executeAccessibleAction(AccessibleAction action, Object... parameters) {
        if (action == AccessibleAction.FIRE) {
            thumb.toggleLatch();
        } else {
            super.executeAccessibleAction(action, parameters);
        }
    }
}
