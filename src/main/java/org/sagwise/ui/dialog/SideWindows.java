package org.sagwise.ui.dialog;

import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Modality;
import javafx.stage.Screen;
import javafx.stage.Stage;

import org.sagwise.ui.model.Subscriptions;
import org.sagwise.ui.theme.AppliedLooks;
import org.sagwise.ui.theme.StyleSheets;

import java.util.ArrayList;
import java.util.List;

/** Windows beside the main one. Escape closes one, and its subscriptions with it. */
public final class SideWindows {

    private static final double MOST_OF_SCREEN = 0.92;

    private final Stage owner;
    private final ReadOnlyObjectProperty<AppliedLooks> looks;
    private final List<Stage> open = new ArrayList<>();

    /**
     * @param looks what they look like
     */
    public SideWindows(Stage owner, ReadOnlyObjectProperty<AppliedLooks> looks) {
        this.owner = owner;
        this.looks = looks;
    }

    /**
     * Opens one, as large as wanted but no larger than the screen.
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
        window.setOnHidden(
                event -> {
                    subscriptions.close();
                    open.remove(window);
                });
        open.add(window);
        window.show();
        return window;
    }

    /** Closes whatever is open. */
    public void closeAll() {
        List.copyOf(open).forEach(Stage::close);
    }
}
