package org.sagwise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The font that screens and exports share has every character that Sagwise writes. */
class BundledFontTest {

    private static final String FOLDER = "/org/sagwise/fonts/";

    /** Signs of units, mathematics, arrows, punctuation and spaces in both languages. */
    private static final String SIGNS =
            "Ω°%‰µμ′″⁻¹²³√∑Δρ" + "+−±×·÷=≠≈<>≤≥∞" + "›‹→←↑↓…–—•" + "“”„‚‘’»«" + "ÄÖÜäöüßé§€" + "\u00a0\u2009\u202f";

    private static final float UNITS_PER_EM = 1000;

    /** The italic zero is drawn one unit narrower than the other digits, which nobody can see. */
    private static final double ONE_UNIT = 1;

    @ParameterizedTest
    @ValueSource(strings = {"Regular", "Bold", "Italic"})
    void font_everySignThatIsWritten_hasAGlyph(String face) throws Exception {
        Font font = load(face);

        String missing = SIGNS.codePoints()
                .filter(sign -> !font.canDisplay(sign))
                .mapToObj("U+%04X"::formatted)
                .collect(Collectors.joining(" "));

        assertEquals("", missing);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Regular", "Bold", "Italic"})
    void font_everyDigit_isEquallyWide(String face) throws Exception {
        Font font = load(face).deriveFont(UNITS_PER_EM);

        var widths = "0123456789".chars().mapToDouble(each -> width(font, each)).summaryStatistics();

        assertEquals(widths.getMin(), widths.getMax(), ONE_UNIT, "numbers in a column must not dance");
    }

    @Test
    void font_itsLicence_liesBesideIt() throws IOException {
        try (InputStream licence = resource("OFL.txt")) {
            String text = new String(licence.readAllBytes(), StandardCharsets.UTF_8);
            assertTrue(text.contains("SIL OPEN FONT LICENSE Version 1.1"), text);
        }
    }

    private static double width(Font font, int digit) {
        var context = new FontRenderContext(null, true, true);
        return font.createGlyphVector(context, Character.toString(digit))
                .getGlyphMetrics(0)
                .getAdvanceX();
    }

    private static Font load(String face) throws IOException, FontFormatException {
        try (InputStream file = resource("SourceSans3-" + face + ".ttf")) {
            return Font.createFont(Font.TRUETYPE_FONT, file);
        }
    }

    private static InputStream resource(String name) {
        return BundledFontTest.class.getResourceAsStream(FOLDER + name);
    }
}
