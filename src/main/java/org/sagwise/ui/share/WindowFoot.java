package org.sagwise.ui.share;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.sagwise.ui.kit.WorkLine;

/** The foot of a window that makes something to hand on: what became of it, and what to do. */
final class WindowFoot extends HBox {

    /**
     * @param state what became of it; takes the room that the buttons leave
     * @param working lets it be stopped while it is made
     */
    WindowFoot(Label state, WorkLine working, Button... buttons) {
        this(state, buttons);
        getChildren().add(1, working);
    }

    /** For what is made at once. */
    WindowFoot(Label state, Button... buttons) {
        state.setWrapText(true);
        state.getStyleClass().add("quiet");
        state.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(state, Priority.ALWAYS);
        getChildren().add(state);
        getChildren().addAll(buttons);
        setAlignment(Pos.CENTER_LEFT);
        getStyleClass().add("window-row");
    }
}
