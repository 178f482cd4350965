package org.sagwise.ui.kit;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Modality;
import javafx.stage.Screen;
import javafx.stage.Stage;
import org.sagwise.ui.settings.AppliedLooks;

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

    /** The window that they are beside. */
    public Stage owner() {
        return owner;
    }

    /** Size of text in them against its usual size. */
    public double textScale() {
        return looks.get().textScale();
    }

    /**
     * Opens one, as large as wanted but no larger than the screen.
     *
     * @param modality whether the main window can be used meanwhile
     * @param subscriptions what its content listens to
     */
    public Stage open(
            String title, Parent content, double width, double height, Modality modality, Subscriptions subscriptions) {
        Stage window = new Stage();
        window.initOwner(owner);
        window.initModality(modality);
        fill(window, title, content, width, height, Screen.getPrimary(), subscriptions);
        window.show();
        return window;
    }

    /**
     * Opens one that a person has to themselves while others look at the main window. It stays when
     * the main window is put aside.
     *
     * @param subscriptions what its content listens to
     */
    public Stage openApart(String title, Parent content, double width, double height, Subscriptions subscriptions) {
        Stage window = new Stage();
        window.getIcons().setAll(owner.getIcons());
        Screen screen = screenApart();
        fill(window, title, content, width, height, screen, subscriptions);
        window.setX(screen.getVisualBounds().getMaxX() - window.getScene().getWidth());
        window.setY(screen.getVisualBounds().getMinY());
        window.show();
        return window;
    }

    /**
     * The first screen, unless others look at the main window there: then another. A main window
     * that does not fill its first screen has not been handed to anybody yet.
     */
    private Screen screenApart() {
        Screen first = Screen.getPrimary();
        double middleX = owner.getX() + owner.getWidth() / 2;
        double middleY = owner.getY() + owner.getHeight() / 2;
        boolean taken = owner.isFullScreen() && first.getBounds().contains(middleX, middleY);
        return Screen.getScreens().stream()
                .filter(screen -> taken && !screen.equals(first))
                .findFirst()
                .orElse(first);
    }

    private void fill(
            Stage window,
            String title,
            Parent content,
            double width,
            double height,
            Screen place,
            Subscriptions subscriptions) {
        window.setTitle(title);
        content.getStyleClass().add("side-window");
        var screen = place.getVisualBounds();
        double scale = textScale();
        Scene scene = new Scene(
                content,
                Math.min(width * scale, screen.getWidth() * MOST_OF_SCREEN),
                Math.min(height * scale, screen.getHeight() * MOST_OF_SCREEN));
        window.setScene(scene);
        StyleSheets.follow(looks, scene.getStylesheets(), subscriptions);
        scene.addEventHandler(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ESCAPE) {
                window.close();
            }
        });
        window.setOnHidden(event -> {
            subscriptions.close();
            open.remove(window);
        });
        open.add(window);
    }

    /** Closes whatever is open. */
    public void closeAll() {
        List.copyOf(open).forEach(Stage::close);
    }
}
