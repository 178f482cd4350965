package org.sagwise.ui.shell;

import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.beans.value.ChangeListener;
import javafx.geometry.Dimension2D;
import javafx.geometry.Rectangle2D;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import javafx.util.Duration;
import org.sagwise.ui.settings.Preferences;
import org.sagwise.ui.settings.PreferencesModel;
import org.sagwise.ui.settings.WindowPlace;

/** Puts the window where it was when it was closed last, if there still is a screen there. */
final class WindowPlacer {

    private static final double USUAL_WIDTH = 1280;
    private static final double USUAL_HEIGHT = 800;
    private static final double LEAST_WIDTH = 900;
    private static final double LEAST_HEIGHT = 520;

    private static final Duration PATIENCE = Duration.millis(800);

    /** Time in which window managers of Linux have answered, as a rule. */
    private static final Duration ANSWER = Duration.millis(120);

    private WindowPlacer() {}

    /**
     * Shows a window in its place: placed first, so that it is laid out once. Some window managers answer late
     * with a size that nobody asked for; for a moment, they are told again.
     */
    static void show(Stage stage, Preferences preferences) {
        WindowPlace place = place(preferences);
        put(stage, place);
        stage.setMinWidth(LEAST_WIDTH);
        stage.setMinHeight(LEAST_HEIGHT);
        stage.show();
        ChangeListener<Number> insist = (size, before, now) -> size(stage, place);
        if (place.state() == WindowPlace.State.NORMAL) {
            stage.widthProperty().addListener(insist);
            stage.heightProperty().addListener(insist);
        }
        Runnable giveWay = () -> {
            stage.widthProperty().removeListener(insist);
            stage.heightProperty().removeListener(insist);
        };
        PauseTransition moment = new PauseTransition(PATIENCE);
        moment.setOnFinished(event -> giveWay.run());
        // A window may be closed and shown anew, in another place, before the moment is over.
        stage.addEventHandler(WindowEvent.WINDOW_HIDDEN, event -> giveWay.run());
        moment.play();
    }

    /** Does something over a window that has just been shown, once it has its size: others lie in its middle. */
    static void whenPlaced(Runnable then) {
        boolean answersLate = System.getProperty("os.name").equals("Linux")
                && !"Monocle".equals(System.getProperty("glass.platform"));
        if (!answersLate) {
            Platform.runLater(then);
            return;
        }
        PauseTransition answer = new PauseTransition(ANSWER);
        answer.setOnFinished(event -> Platform.runLater(then));
        answer.play();
    }

    /** About the size that a window will have inside, so that what it holds is laid out for it from the first. */
    static Dimension2D size(Preferences preferences) {
        WindowPlace place = place(preferences);
        return new Dimension2D(place.width(), place.height());
    }

    private static WindowPlace place(Preferences preferences) {
        return preferences.window().filter(WindowPlacer::isOnScreen).orElse(usual());
    }

    static void remember(Stage stage, PreferencesModel preferences) {
        WindowPlace.State state =
                stage.isMaximized() || stage.isFullScreen() ? WindowPlace.State.MAXIMIZED : WindowPlace.State.NORMAL;
        if (state == WindowPlace.State.NORMAL) {
            WindowPlace place = new WindowPlace(stage.getX(), stage.getY(), stage.getWidth(), stage.getHeight(), state);
            preferences.change(now -> now.withWindow(place));
        } else {
            preferences.change(
                    now -> now.withWindow(now.window().orElse(usual()).maximized()));
        }
    }

    private static WindowPlace usual() {
        Rectangle2D screen = Screen.getPrimary().getVisualBounds();
        double width = Math.min(USUAL_WIDTH, screen.getWidth());
        double height = Math.min(USUAL_HEIGHT, screen.getHeight());
        return new WindowPlace(
                screen.getMinX() + (screen.getWidth() - width) / 2,
                screen.getMinY() + (screen.getHeight() - height) / 2,
                width,
                height,
                WindowPlace.State.NORMAL);
    }

    private static void put(Stage stage, WindowPlace place) {
        stage.setX(place.x());
        stage.setY(place.y());
        size(stage, place);
        stage.setMaximized(place.state() == WindowPlace.State.MAXIMIZED);
    }

    private static void size(Stage stage, WindowPlace place) {
        stage.setWidth(place.width());
        stage.setHeight(place.height());
    }

    /** Whether enough of it is on a screen to be taken hold of. */
    private static boolean isOnScreen(WindowPlace place) {
        return !Screen.getScreensForRectangle(place.x() + place.width() / 4, place.y(), place.width() / 2, 20)
                .isEmpty();
    }
}
