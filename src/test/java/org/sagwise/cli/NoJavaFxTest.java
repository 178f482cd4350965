package org.sagwise.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A verb runs in a virtual machine of its own; what it loads is listed. */
class NoJavaFxTest {

    @TempDir
    private Path folder;

    @Test
    void readings_inAFreshMachine_loadNothingOfJavaFx() throws IOException, InterruptedException {
        Path loaded = folder.resolve("loaded.txt");
        Path printed = folder.resolve("printed.txt");
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xshare:auto",
                        "-XX:TieredStopAtLevel=1",
                        "-Xlog:class+load:file=" + loaded,
                        "-cp",
                        System.getProperty("java.class.path"),
                        "org.sagwise.app.Main",
                        "readings",
                        Cli.demo("two-cells-side-by-side"))
                .redirectErrorStream(true)
                .redirectOutput(printed.toFile())
                .start();
        assertEquals(0, process.waitFor(), () -> read(printed));
        List<String> classes = Files.readAllLines(loaded);
        assertTrue(classes.stream().anyMatch(line -> line.contains("org.sagwise.reading.Bench")));
        assertFalse(classes.stream()
                .anyMatch(line ->
                        line.contains(" javafx.") || line.contains(" com.sun.javafx.") || line.contains(" java.awt.")));
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException failure) {
            return failure.toString();
        }
    }
}
