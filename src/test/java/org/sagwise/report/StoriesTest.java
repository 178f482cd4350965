package org.sagwise.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.ScenarioReader;
import org.sagwise.file.ShareText;
import org.sagwise.report.post.PostFormat;
import org.sagwise.text.Signs;

/** Three invented stories: what a stranger reads in the post that explains each. */
class StoriesTest {

    private static final List<String> NAMES = Stories.NAMES;

    private static void assertTells(String post, String... words) {
        for (String each : words) {
            assertTrue(post.contains(each), each + "\n" + post);
        }
    }

    /** By hand: each cell 22 mΩ, two contacts of 8 mΩ: 2 · 4.08 V / 60 mΩ = 136 A. */
    @Test
    void reversedInParallel_itsPost_tellsTheRingTheSumAndTheTurn() {
        assertTells(
                Stories.text("reversed-in-parallel"),
                "2 cells side by side (in parallel) on a coil of 0.60 Ω.",
                "Please do not build or use it like this",
                "Upper cell's plus touches lower cell's minus (8 mΩ)",
                "the button is not in that ring",
                "(4.08 V + 4.08 V) / 60 mΩ = 136 A",
                "Turn lower cell",
                "take the cells out first",
                "lower cell, button let go 136 A 0.00 A");
    }

    @Test
    void newAndWorn_itsPost_tellsWhichIsEmptyFirst() {
        assertTells(
                Stories.text("new-and-worn-in-series"),
                "2 cells in a row (in series)",
                "a pack is only as good as its weakest cell",
                "Two years old falls to its cut-off under load",
                "In place of two years old, take a cell just like new cell",
                "run time 2 h");
    }

    /**
     * By hand: 60 mm of AWG 26 (0.1288 mm²) with the resistivity of annealed copper at 25 °C, 17.24
     * nΩ·m · (1 + 0.00393 · 5), are 8.19 mΩ; at 26.2 A that is 5.6 W.
     */
    @Test
    void thinJumpers_itsPost_tellsTheHeatInTheWire() {
        assertTells(
                Stories.text("thin-jumpers"),
                "WARNING: Wire that can melt",
                "26.2 A x 26.2 A x 8.19 mΩ = 5.61 W of heat in a wire 60 mm long",
                "note: \"this one smells\"",
                "Use 12 AWG or thicker (cell A's plus to button's first end, the coil's second"
                        + " end to cell A's minus)");
    }

    @ParameterizedTest
    @FieldSource("NAMES")
    void text_everyStory_fitsACodeBlockAndStandsAlone(String name) {
        for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            String post = Stories.post(Stories.story(name), PostFormat.TEXT, locale, Signs.ASCII);
            assertTrue(post.chars().allMatch(sign -> sign < 0x7f), "ASCII");
            assertTrue(post.lines().allMatch(line -> line.length() <= 72), post);
            assertFalse(post.contains("\t"), "no tabs");
            assertFalse(post.matches("(?is).*\\bsafe\\b.*"), "no promise");
        }
    }

    /** The last thing in the post is the scenario as built, in whatever lines. */
    @ParameterizedTest
    @FieldSource("NAMES")
    void everyFormat_itsLastShareText_opensAsTheScenario(String name) {
        ScenarioReader reader = new ScenarioReader(CatalogueLoader.builtIn());
        for (PostFormat format : PostFormat.values()) {
            String post = Stories.post(Stories.story(name), format, Locale.ENGLISH, Signs.PRINT);
            String last = post.substring(post.lastIndexOf(ShareText.BEGINNING));
            assertEquals(
                    Stories.story(name), ShareText.read(last, reader).scenario().orElseThrow());
        }
    }

    @ParameterizedTest
    @FieldSource("NAMES")
    void everyFormat_bothLanguages_carryTheNotice(String name) {
        for (PostFormat format : PostFormat.values()) {
            String english = Stories.post(Stories.story(name), format, Locale.ENGLISH, Signs.PRINT)
                    .replaceAll("\\s+", " ");
            assertTells(english, "no clearance to build", "Consumer Product Safety Commission");
            String german = Stories.post(Stories.story(name), format, Locale.GERMAN, Signs.PRINT);
            assertFalse(german.contains("{0}") || german.contains("The "), german);
        }
    }
}
