package org.sagwise.hazard;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Holds the list of hazards for people and the hazards in the program together. */
class HazardListTest {

    private static final Pattern ROW = Pattern.compile("(?m)^\\| `([a-z-]+)` \\| .*\\|$");

    @Test
    void hazards_inTheList_areThoseThatHaveTexts() throws IOException {
        Set<String> listed = ROW.matcher(Files.readString(Path.of("docs/hazards.md")))
                .results()
                .map(row -> row.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> texts = ResourceBundle.getBundle("org.sagwise.texts.cautions", Locale.ENGLISH).keySet().stream()
                .filter(key -> key.endsWith(".title"))
                .map(key -> key.replaceAll("\\..*", ""))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(texts, listed);
    }

    @Test
    void hazards_thatExamplesShow_haveTheSignalOfTheList() throws IOException {
        String list = Files.readString(Path.of("docs/hazards.md"));
        Examples.all().forEach((example, scenario) -> {
            String id = example.replaceAll("\\..*", "");
            String signal = Found.one(id, scenario).signal().name();
            String row = list.replaceAll("(?s).*\\| `" + id + "` \\|([^|]*)\\|.*", "$1");
            assertEquals(true, row.contains(signal), example + ": " + row);
        });
    }
}
