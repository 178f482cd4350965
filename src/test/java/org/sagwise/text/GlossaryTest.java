package org.sagwise.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.report.figure.WordFigure;

class GlossaryTest {

    private static final Path PAGE = Path.of("docs", "glossary.md");

    @Test
    void ids_ofTheList_areThoseOfTheBundle() {
        Set<String> bundled = ResourceBundle.getBundle("org.sagwise.texts.glossary", Locale.ENGLISH).keySet().stream()
                .map(key -> key.substring(0, key.indexOf('.')))
                .collect(Collectors.toSet());

        assertEquals(bundled, Set.copyOf(Glossary.ids()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void entries_eachInItsOwnForms_isFound(String language) {
        for (Glossary.Entry entry : Glossary.in(Locale.forLanguageTag(language)).entries()) {
            String word = entry.term().replaceAll(" \\(.*\\)", "");
            assertTrue(entry.isIn("x " + word + "."), entry.term());
            assertFalse(!word.contains(" ") && entry.isIn("x" + word), entry.term());
        }
    }

    @Test
    void firstUsedIn_wordOfAnEarlierText_isNotGivenAgain() {
        Glossary glossary = Glossary.in(Locale.ENGLISH);

        List<String> given = glossary.firstUsedIn("The sag of a cell.", List.of("One cell.")).stream()
                .map(Glossary.Entry::id)
                .toList();

        assertEquals(List.of("sag"), given);
    }

    /** Written anew with -Dsagwise.write=true. */
    @Test
    void page_ofTheDocs_isMadeOfTheBundles() throws IOException {
        String page = page();
        if (Boolean.getBoolean("sagwise.write")) {
            Files.writeString(PAGE, page);
        }

        assertEquals(page, Files.readString(PAGE), "write it anew");
    }

    private static String page() {
        StringBuilder page = new StringBuilder("# Words of the trade\n\n"
                + "One word for one thing, in lessons, cautions, posts and on the bench. Made from the bundles `glossary`;"
                + " in the window under *Help, Words…*, on the command line by `./sagwise lesson glossary`. `WordListTest` finds"
                + " other words for the same thing.\n\n"
                + "| English | German | meaning | |\n| --- | --- | --- | --- |\n");
        Glossary german = Glossary.in(Locale.GERMAN);
        for (Glossary.Entry entry : Glossary.in(Locale.ENGLISH).alphabetical()) {
            page.append("| ")
                    .append(entry.term())
                    .append(" | ")
                    .append(german.entry(entry.id()).orElseThrow().term())
                    .append(" | ")
                    .append(entry.text())
                    .append(
                            WordFigure.words().contains(entry.id())
                                    ? " | ![" + entry.term() + "](" + picture(entry) + ")"
                                    : " |")
                    .append(" |\n");
        }
        return page.toString();
    }

    private static String picture(Glossary.Entry entry) {
        return "images/word-" + entry.id() + ".svg";
    }

    /** Each drawing of the page is there, and no two are alike. */
    @Test
    void drawings_ofTheDocs_areMadeByThePainters() throws IOException {
        Set<String> drawn = new HashSet<>();
        for (Glossary.Entry entry : Glossary.in(Locale.ENGLISH).entries()) {
            Optional<WordFigure> figure = WordFigure.of(entry.id(), CatalogueLoader.builtIn(), Locale.ENGLISH);
            if (figure.isPresent()) {
                String svg = figure.get().svg(entry.term());
                Path file = PAGE.resolveSibling(picture(entry));
                if (Boolean.getBoolean("sagwise.write")) {
                    Files.writeString(file, svg);
                }
                assertTrue(Files.exists(file), file + ": write it anew");
                assertTrue(svg.contains("<title>" + entry.term() + "</title>"), svg);
                drawn.add(svg.replaceAll("<title>.*</title>", ""));
            }
        }
        assertEquals(WordFigure.words().size(), drawn.size());
        assertTrue(Glossary.ids().containsAll(WordFigure.words()));
    }
}
