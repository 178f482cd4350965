package org.sagwise.ui.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.sagwise.picture.look.Contrast;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.pen.Colour;

/** The three sets of colours have the same names, and every text can be read on its ground. */
class StyleSheetsTest {

    private static final Path FOLDER = Path.of("src/main/resources/org/sagwise/ui");
    private static final Pattern COLOUR = Pattern.compile("(-sw-[a-z-]+):\\s*(#[0-9a-f]{6});");
    private static final Pattern LOOKED_UP = Pattern.compile("-sw-[a-z-]+");

    private static Map<String, Colour> colours(Theme theme) throws IOException {
        Map<String, Colour> colours = new TreeMap<>();
        ToneSheet.colours(theme).forEach((name, colour) -> colours.put("-sw-" + name, colour));
        String sheet = Files.readString(FOLDER.resolve(StyleSheets.word(theme) + ".css"));
        Matcher matcher = COLOUR.matcher(sheet);
        while (matcher.find()) {
            colours.put(matcher.group(1), Colour.of(Integer.decode(matcher.group(2))));
        }
        return colours;
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void looks_theirColours_areThoseThatTheWindowAsksFor(Theme theme) throws IOException {
        Set<String> asked = new TreeSet<>();
        Matcher matcher = LOOKED_UP.matcher(Files.readString(FOLDER.resolve("window.css")));
        while (matcher.find()) {
            asked.add(matcher.group());
        }

        assertEquals(asked, colours(theme).keySet());
    }

    @ParameterizedTest
    @CsvSource({
        "ink, paper",
        "ink, card",
        "ink, felt",
        "ink, note",
        "ink, present",
        "ink, flag-pale",
        "quiet, paper",
        "quiet, card",
        "quiet, felt",
        "quiet, flag-pale",
        "give, paper",
        "lose, paper",
        "lose, card",
        "flag, flag-pale",
        "flag, paper",
        "on-strip, strip",
        "on-fire, fire",
        "paper, ink"
    })
    void text_onItsGround_hasEnoughContrast(String text, String ground) throws IOException {
        for (Theme theme : Theme.values()) {
            assertContrast(theme, text, ground, Contrast.TEXT);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "strong-line, paper",
        "strong-line, card",
        "focus, paper",
        "focus, felt",
        "focus, card",
        "give, track",
        "flag, track",
        "fire, paper"
    })
    void mark_onItsGround_hasEnoughContrast(String mark, String ground) throws IOException {
        for (Theme theme : Theme.values()) {
            assertContrast(theme, mark, ground, Contrast.GRAPHICS);
        }
    }

    private static void assertContrast(Theme theme, String over, String under, double least) throws IOException {
        Map<String, Colour> colours = colours(theme);
        double contrast = Contrast.between(colours.get("-sw-" + over), colours.get("-sw-" + under));
        assertTrue(contrast >= least, theme + ": " + over + " on " + under + " is " + contrast);
    }
}
