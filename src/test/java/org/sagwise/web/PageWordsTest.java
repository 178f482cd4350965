package org.sagwise.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.sagwise.part.PartKind;
import org.sagwise.reading.Ledger;
import org.sagwise.reading.PartReading;
import org.sagwise.text.Texts;
import org.sagwise.web.engine.Words;

/** Every word that the page says is in a bundle: one that is missing would be found in a browser only. */
class PageWordsTest {

    private static final Path CODE = Path.of("src/main/java/org/sagwise/web");
    private static final Pattern UI = Pattern.compile("\\.ui\\(\\)\\s*\\.say\\(\\s*\"([\\w.]+[\\w])\"\\s*[,)]");
    private static final Pattern PAGE =
            Pattern.compile("(?:words\\.say|words\\(\\)\\.say|words\\(\\)\\s*\\.say)\\(\\s*\"([\\w.-]+)\"\\s*[,)]");
    private static final Pattern SAID = Pattern.compile("data-say=\"([\\w.-]+)\"");

    private static List<String> found(Pattern pattern) throws IOException {
        List<String> found = new ArrayList<>();
        try (Stream<Path> files = Files.walk(CODE)) {
            for (Path file : files.filter(it -> it.toString().endsWith(".java")).toList()) {
                pattern.matcher(Files.readString(file))
                        .results()
                        .map(match -> match.group(1))
                        .forEach(found::add);
            }
        }
        return found;
    }

    @Test
    void words_ofThePage_areThere() throws IOException {
        List<String> keys = found(PAGE);
        for (String form : List.of("page.html", "lesson.html")) {
            SAID.matcher(Files.readString(Path.of("src/main/resources/org/sagwise/web", form)))
                    .results()
                    .map((MatchResult match) -> match.group(1))
                    .forEach(keys::add);
        }
        Texts page = Words.in(Locale.ENGLISH).page();

        assertEquals(
                new TreeSet<String>(),
                new TreeSet<>(keys.stream().filter(key -> !page.has(key)).toList()));
    }

    @Test
    void words_ofTheWindow_areThere() throws IOException {
        List<String> keys = found(UI);
        for (Ledger.Entry entry : Ledger.Entry.values()) {
            keys.add("ledger.row." + entry.name().toLowerCase(Locale.ROOT));
        }
        for (PartKind kind : PartKind.values()) {
            keys.add("kind." + kind.word());
        }
        for (PartReading.State state : PartReading.State.values()) {
            keys.add("state." + state.name().toLowerCase(Locale.ROOT));
        }
        keys.addAll(List.of(
                "state.closed", "limits.charging", "limits.figure", "joint.ideal", "joint.touch", "joint.jumper"));
        Texts ui = Words.in(Locale.ENGLISH).ui();

        assertEquals(
                new TreeSet<String>(),
                new TreeSet<>(keys.stream().filter(key -> !ui.has(key)).toList()));
        assertEquals(
                new TreeSet<String>(),
                new TreeSet<>(keys.stream()
                        .filter(key -> !PageResources.isSaid("org/sagwise/texts/ui.properties", key, true))
                        .toList()),
                "left out of the page");
    }
}
