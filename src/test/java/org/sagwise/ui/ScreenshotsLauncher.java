package org.sagwise.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.application.Application;
import org.sagwise.ui.settings.ConfigFolder;

/** Starts {@link Screenshots}; the JVM refuses to start an Application from the class path. */
public final class ScreenshotsLauncher {

    private ScreenshotsLauncher() {}

    /**
     * @param args folder for the pictures, prefix of their names, settings as JSON, and what to
     *     walk: {@code demos}, {@code dialogs} or the name of one demo
     */
    public static void main(String[] args) throws IOException {
        Path config = Files.createTempDirectory("sagwise-screenshots");
        Files.writeString(config.resolve("settings.json"), args[2]);
        System.setProperty(ConfigFolder.OVERRIDE, config.toString());
        Application.launch(Screenshots.class, args);
    }
}
