package org.sagwise.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sagwise.file.LessonLibrary;
import org.sagwise.web.engine.Words;
import org.sagwise.web.lesson.OnThisPage;

class OnThisPageTest {

    private static final Path TEXTS = Path.of("src/main/resources/org/sagwise/texts");
    private static final Pattern BOLD = Pattern.compile("\\*([^*\"]+)\\*");

    /** What a page calls by the same name as the window does, or very nearly. */
    private static final List<String> HERE = List.of("undo", "redo", "latch", "time-go");

    /** Every command that a built-in lesson names is on the page, or the page says what to do instead. */
    @ParameterizedTest
    @CsvSource({"en, ui.properties", "de, ui_de.properties"})
    void instead_ofEveryCommandThatALessonNames_isSaid(String language, String bundle) throws IOException {
        Words words = Words.in(Locale.forLanguageTag(language));
        Properties ui = new Properties();
        try (Reader file = Files.newBufferedReader(TEXTS.resolve(bundle))) {
            ui.load(file);
        }
        TreeMap<String, String> commands = new TreeMap<>();
        ui.stringPropertyNames().stream()
                .filter(key -> key.matches("command\\.[a-z-]+"))
                .forEach(key -> commands.put(ui.getProperty(key).replace("_", ""), key.replace("command.", "")));
        TreeMap<String, String> unsaid = new TreeMap<>();
        int said = 0;
        for (String id : LessonLibrary.ids()) {
            String lesson =
                    new String(LessonLibrary.source(id).file("lesson.yaml").orElseThrow(), StandardCharsets.UTF_8);
            Pattern text = Pattern.compile("\\b" + language + ": \"([^\"]*)\"");
            for (String one : text.matcher(lesson)
                    .results()
                    .map((MatchResult match) -> match.group(1))
                    .toList()) {
                said += OnThisPage.instead(one, words).size();
                BOLD.matcher(one).results().map(match -> match.group(1)).forEach(name -> {
                    String command = commands.get(name);
                    if (command != null
                            && !HERE.contains(command)
                            && OnThisPage.instead("*" + name + "*", words).isEmpty()) {
                        unsaid.put(id + " " + name, command);
                    }
                });
            }
        }

        assertEquals(new TreeMap<String, String>(), unsaid);
        assertTrue(said > 8, said + " times");
    }
}
