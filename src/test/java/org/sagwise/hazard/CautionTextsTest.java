package org.sagwise.hazard;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.fixture.Circuits;
import org.sagwise.scenario.Part;

class CautionTextsTest {

    /** Texts and advice are read in a hurry. A name or a number with its unit counts as a word. */
    private static final int MOST_WORDS = 40;

    private static final List<Locale> LANGUAGES = List.of(Locale.ENGLISH, Locale.GERMAN);

    /** Words that promise what nobody can. */
    private static final Pattern PROMISE =
            Pattern.compile("\\b(un)?safe(ly|ty)?\\b|\\b(un)?sicher(e|er|es|en|em|heit)?\\b");

    private static ResourceBundle bundle(Locale locale) {
        return ResourceBundle.getBundle("org.sagwise.texts.cautions", locale);
    }

    static Stream<String> examples() {
        return Examples.all().keySet().stream();
    }

    private static Caution caution(String example) {
        String id = example.replaceAll("\\..*", "");
        return Found.one(id, Examples.all().get(example));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void say_everyExample_isFilledIn(String example) {
        Caution caution = caution(example);
        for (Locale locale : LANGUAGES) {
            for (String text : List.of(
                    CautionTexts.title(caution, locale),
                    CautionTexts.text(caution, locale),
                    CautionTexts.advice(caution, locale))) {
                assertAll(
                        () -> assertFalse(text.contains("{"), text),
                        () -> assertFalse(text.matches(".*\\b(unknown|unbekannt)\\b.*"), text),
                        () -> assertFalse(text.contains("—"), text),
                        () -> assertFalse(text.contains("[") || text.contains("="), text));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void say_everyExample_usesTheWordsOfItsVariant(String example) {
        Caution caution = caution(example);
        Object variant = caution.details().get(CautionBuilder.VARIANT);
        assertEquals(example, variant == null ? caution.id() : caution.id() + "." + variant);
    }

    @Test
    void bundles_theirKeys_areTheSame() {
        assertEquals(
                new TreeSet<>(bundle(Locale.ENGLISH).keySet()),
                new TreeSet<>(bundle(Locale.GERMAN).keySet()));
    }

    @Test
    void bundles_everyHazardText_isShownByAnExample() {
        Set<String> texts = bundle(Locale.ENGLISH).keySet().stream()
                .filter(key -> key.endsWith(".text"))
                .map(key -> key.substring(0, key.length() - ".text".length()))
                .collect(Collectors.toCollection(TreeSet::new));
        texts.remove("no-steady-state");
        // What only time shows has its examples in LookAheadTest.
        texts.removeIf(text -> text.startsWith("ahead-"));
        Set<String> shown = examples()
                .map(example -> texts.contains(example) ? example : example.replaceAll("\\..*", ""))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(texts, shown);
    }

    @ParameterizedTest
    @FieldSource("LANGUAGES")
    void bundle_itsWords_promiseNothing(Locale locale) {
        ResourceBundle bundle = bundle(locale);
        for (String key : bundle.keySet()) {
            String text = bundle.getString(key);
            assertFalse(PROMISE.matcher(text.toLowerCase(locale)).find(), key + ": " + text);
        }
    }

    @ParameterizedTest
    @FieldSource("LANGUAGES")
    void bundle_itsTexts_areShort(Locale locale) {
        ResourceBundle bundle = bundle(locale);
        for (String key : bundle.keySet()) {
            String text = bundle.getString(key).replaceAll("\\{[^}]*}", "word");
            int words = text.split("\\s+").length;
            assertTrue(words <= MOST_WORDS, key + " has " + words + " words: " + text);
        }
    }

    /** No bench that comes to no rest is known, so its words are tried on a caution by hand. */
    @Test
    void text_partsWithoutSteadyState_areNamed() {
        Caution caution = new Caution(
                "no-steady-state",
                Signal.NOTICE,
                List.of("b1"),
                List.of(),
                Caution.When.FIRED,
                Double.NaN,
                Double.NaN,
                "",
                Map.of("parts", List.of("one board", "another")));
        assertTrue(CautionTexts.text(caution, Locale.ENGLISH)
                .startsWith("No steady state was found for one board and another:"));
    }

    @Test
    void text_numbers_followTheLanguage() {
        Caution caution = caution("cell-over-limit.one");
        assertTrue(CautionTexts.text(caution, Locale.ENGLISH).contains("24.7 A"));
        assertTrue(CautionTexts.text(caution, Locale.GERMAN).contains("24,7 A"));
    }

    @Test
    void signal_everyWord_isThatOfTheStandardInEnglish() {
        for (Signal signal : Signal.values()) {
            assertEquals(signal.name(), CautionTexts.signal(signal, Locale.ENGLISH));
        }
        assertEquals("GEFAHR", CautionTexts.signal(Signal.DANGER, Locale.GERMAN));
    }

    @Test
    void text_labelledPart_isCalledByItsLabel() {
        Caution caution = Found.one(
                "torn-wrap",
                Examples.single(Examples.good("A").with("wrap", "torn").with("label", "Left")));
        assertTrue(CautionTexts.text(caution, Locale.ENGLISH).contains("wrap of Left is torn"));
    }

    @Test
    void text_nameThatBeginsASentence_isCapitalised() {
        String text = CautionTexts.text(caution("cell-empty"), Locale.ENGLISH);
        assertTrue(text.startsWith("Cell A rests"), text);
    }

    @Test
    void text_widthOfAWire_isInMillimetres() {
        String text = CautionTexts.text(caution("jumper-over-ampacity"), Locale.ENGLISH);
        assertTrue(text.contains("0.511 mm"), text);
    }

    @Test
    void text_manyNames_areCutShort() {
        Part[] cells = new Part[6];
        for (int i = 0; i < cells.length; i++) {
            cells[i] = Examples.good("C" + i);
        }
        Caution caution = Found.one("cell-over-limit", Circuits.series(0.6, cells));
        String text = CautionTexts.text(caution, Locale.ENGLISH);
        assertTrue(text.contains("cell C0, cell C1, cell C2 and 3 more"), text);
    }
}
