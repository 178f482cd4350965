package org.sagwise.ui.dialog;

import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Modality;
import javafx.stage.Screen;
import javafx.stage.Stage;

import org.sagwise.ui.model.Subscriptions;
import org.sagwise.ui.theme.LooksModel;
import org.sagwise.ui.theme.StyleSheets;

/** A window beside the main one. Escape closes it, and its subscriptions with it. */
public final class SideWindow {

    private static final double MOST_OF_SCREEN = 0.92;

    private final Stage owner;
    private final LooksModel looks;

    public SideWindow(Stage owner, LooksModel looks) {
        this.owner = owner;
        this.looks = looks;
    }

    /**
     * Opens it, as large as wanted but no larger than the screen.
     *
     * @param modality whether the main window can be used meanwhile
     * @param subscriptions what its content listens to
     */
    public Stage open(
            String title,
            Parent content,
            double width,
            double height,
            Modality modality,
            Subscriptions subscriptions) {
        Stage window = new Stage();
        window.initOwner(owner);
        window.initModality(modality);
        window.setTitle(title);
        content.getStyleClass().add("side-window");
        var screen = Screen.getPrimary().getVisualBounds();
        double scale = looks.get().textScale();
        Scene scene =
                new Scene(
                        content,
                        Math.min(width * scale, screen.getWidth() * MOST_OF_SCREEN),
                        Math.min(height * scale, screen.getHeight() * MOST_OF_SCREEN));
        window.setScene(scene);
        StyleSheets.follow(looks, scene.getStylesheets(), subscriptions);
        scene.addEventHandler(
                KeyEvent.KEY_PRESSED,
                event -> {
                    if (event.getCode() == KeyCode.ESCAPE) {
                        window.close();
                    }
                });
        window.setOnHidden(event -> subscriptions.close());
        window.show();
        return window;
    }
}
