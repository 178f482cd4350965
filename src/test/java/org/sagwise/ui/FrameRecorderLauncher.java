package org.sagwise.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javafx.application.Application;
import org.sagwise.file.ScenarioFiles;
import org.sagwise.fixture.Packs;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.settings.ConfigFolder;

/** Starts {@link FrameRecorder}; the JVM refuses to start an Application from the class path. */
public final class FrameRecorderLauncher {

    private static final String SETTINGS = "{\"notice_read\": 1000, \"looks\": \"light\", \"motion\": \"full\","
            + " \"language\": \"en\","
            + " \"window\": {\"x\": 0, \"y\": 0, \"width\": %d, \"height\": %d}}";

    private FrameRecorderLauncher() {}

    /**
     * @param args strings side by side and cells in each, as in {@code 6x3}; width and height of
     *     the window, as in {@code 1280x720}; seconds for which each task is recorded; names of
     *     tasks, all without any
     */
    public static void main(String[] args) throws IOException {
        Path folder = Files.createTempDirectory("sagwise-frames");
        int[] pack = two(args[0]);
        int[] size = two(args[1]);
        Path file = folder.resolve("pack.sagwise.json");
        Scenario scenario = Packs.of(pack[0], pack[1]).released();
        ScenarioFiles.save(file, scenario);
        Files.writeString(folder.resolve("settings.json"), String.format(Locale.ROOT, SETTINGS, size[0], size[1]));
        System.setProperty(ConfigFolder.OVERRIDE, folder.toString());
        System.out.println(scenario.parts().size() + " parts, window " + args[1]);
        args[0] = file.toString();
        Application.launch(FrameRecorder.class, args);
    }

    private static int[] two(String text) {
        String[] numbers = text.split("x");
        return new int[] {Integer.parseInt(numbers[0]), Integer.parseInt(numbers[1])};
    }
}
