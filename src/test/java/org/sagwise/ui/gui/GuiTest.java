package org.sagwise.ui.gui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.application.Application;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.sagwise.ui.SagwiseApp;
import org.sagwise.ui.settings.ConfigFolder;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/**
 * A test that works the real window as a person does. It has a settings folder of its own, in
 * English, with the first-start notice already read.
 */
@Tag("gui")
abstract class GuiTest {

    private static final String SETTINGS = "{\"notice_read\": 1000, \"language\": \"%s\", \"looks\": \"light\"}";

    @TempDir
    private Path folder;

    private final FxRobot robot = new QuickRobot();
    private Application application;

    @BeforeEach
    void openToolkit() throws TimeoutException {
        FxToolkit.registerPrimaryStage();
    }

    @AfterEach
    void closeWindow() throws TimeoutException {
        if (application != null) {
            FxToolkit.cleanupApplication(application);
        }
        FxToolkit.cleanupStages();
        System.clearProperty(ConfigFolder.OVERRIDE);
    }

    /** Opens the window in English, on a file or on the opening scenario. */
    void open(String... arguments) throws IOException, TimeoutException {
        openIn("en", arguments);
    }

    void openIn(String language, String... arguments) throws IOException, TimeoutException {
        openWith(String.format(SETTINGS, language), arguments);
    }

    /** Opens a window of classes that were loaded on their own. */
    void openIn(String language, Class<? extends Application> window) throws IOException, TimeoutException {
        open(window, String.format(SETTINGS, language));
    }

    void openWith(String settings, String... arguments) throws IOException, TimeoutException {
        open(SagwiseApp.class, settings, arguments);
    }

    private void open(Class<? extends Application> window, String settings, String... arguments)
            throws IOException, TimeoutException {
        Path config = Files.createDirectories(folder.resolve("config"));
        Files.writeString(config.resolve("settings.json"), settings);
        System.setProperty(ConfigFolder.OVERRIDE, config.toString());
        application = FxToolkit.setupApplication(window, arguments);
        settle();
    }

    FxRobot robot() {
        return robot;
    }

    Path folder() {
        return folder;
    }

    /** Works a button by keyboard. */
    void work(String id) {
        robot.interact(() -> node(id).requestFocus());
        robot.push(KeyCode.ENTER);
        settle();
    }

    /** Opens the column with the readings beside whatever else is open. */
    void openReadings() {
        if (!isThere("side")) {
            robot.push(KeyCode.CONTROL, KeyCode.F9);
            settle();
        }
    }

    /** Opens the examples in the column at the left. */
    void openExamples() {
        robot.interact(() -> ((ButtonBase) node("tab-examples")).fire());
        settle();
    }

    /** Lessons are read behind the first frames. */
    void awaitLesson(String id) throws TimeoutException {
        WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> isThere(id));
        settle();
    }

    /** Opens the row with the clock. */
    void openClock() {
        if (!node("clock").isVisible()) {
            robot.interact(() -> ((ButtonBase) node("clock-toggle")).fire());
            settle();
        }
    }

    void settle() {
        QuickRobot.settle();
    }

    Node node(String id) {
        return robot.lookup("#" + id).query();
    }

    boolean isThere(String id) {
        return robot.lookup("#" + id).tryQuery().isPresent();
    }

    String text(String id) {
        return node(id) instanceof Text bare ? bare.getText() : ((Label) node(id)).getText();
    }
}
