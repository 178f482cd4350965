package org.sagwise.demo;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.file.DemoScenarios;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Holds the folder for people and the files inside the program together. */
class DemoFilesTest {

    private static final Path FOLDER = Path.of("demo-scenarios");
    private static final Path INSIDE = Path.of("src/main/resources/org/sagwise/demo");

    static List<String> names() {
        return DemoScenarios.names();
    }

    @Test
    void names_theFolders_holdExactlyThese() throws IOException {
        var listed = new TreeSet<>(names().stream().map(DemoScenarios::fileName).toList());

        assertEquals(listed, filesIn(FOLDER));
        assertEquals(listed, filesIn(INSIDE));
    }

    @ParameterizedTest
    @MethodSource("names")
    void bytes_ofADemo_areThoseInTheFolder(String name) throws IOException {
        byte[] inFolder = Files.readAllBytes(FOLDER.resolve(DemoScenarios.fileName(name)));

        assertArrayEquals(inFolder, DemoScenarios.bytes(name), "copy it to " + INSIDE);
    }

    @Test
    void opening_isAmongTheDemos() {
        assertTrue(names().contains(DemoScenarios.OPENING));
    }

    private static TreeSet<String> filesIn(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .collect(TreeSet::new, TreeSet::add, TreeSet::addAll);
        }
    }
}
