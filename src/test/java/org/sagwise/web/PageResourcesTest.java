package org.sagwise.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A file that the page's engine lacks is missed in a browser only, so that whoever adds one is asked here. */
class PageResourcesTest {

    private static final Path RESOURCES = Path.of("src/main/resources/org/sagwise");

    /** Nothing that runs in a page says these. */
    private static final Set<String> FOR_OTHERS = Set.of(
            "cli",
            "cli-words",
            "drawer",
            "drawer-problems",
            "handout",
            "health",
            "lesson-cli",
            "man",
            "plan",
            "symptoms",
            "trade-words",
            "vary",
            "window",
            "words");

    @Test
    void texts_allBundles_areTakenAlongOrForOthers() throws IOException {
        Set<String> known = new TreeSet<>(FOR_OTHERS);
        known.addAll(PageResources.TEXTS);
        known.addAll(PageResources.LESSON_TEXTS);

        assertEquals(
                known,
                files("texts", ".properties").stream()
                        .filter(name -> !name.contains("_"))
                        .collect(Collectors.toCollection(TreeSet::new)));
    }

    @Test
    void catalogue_allFamilies_areTakenAlong() throws IOException {
        assertEquals(new TreeSet<>(PageResources.CATALOGUE), files("catalogue", ".json"));
    }

    private static Set<String> files(String folder, String ending) throws IOException {
        try (Stream<Path> files = Files.list(RESOURCES.resolve(folder))) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(ending))
                    .map(name -> name.replace(ending, ""))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }
}
