package org.sagwise.hazard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

class NoticesTest {

    /** ANSI Z535.6 asks for few words; forty is this project's own limit. */
    private static final int MOST_WORDS = 40;

    private static final List<Locale> LANGUAGES = List.of(Locale.ENGLISH, Locale.GERMAN);

    private static ResourceBundle bundle(Locale locale) {
        return ResourceBundle.getBundle("org.sagwise.texts.notices", locale);
    }

    @Test
    void bundles_theirKeys_areTheSame() {
        assertEquals(bundle(Locale.ENGLISH).keySet(), bundle(Locale.GERMAN).keySet());
    }

    @ParameterizedTest
    @FieldSource("LANGUAGES")
    void messages_everyText_isShortAndHasASignalWord(Locale locale) {
        Set<String> signals = new HashSet<>();
        for (Signal signal : Signal.values()) {
            signals.add(CautionTexts.signal(signal, locale));
        }
        List<Notices.Message> messages = new ArrayList<>(Notices.messages(locale));
        messages.add(Notices.firstStart(locale));
        for (Notices.Message message : messages) {
            int words = message.text().split("\\s+").length;
            assertTrue(words <= MOST_WORDS, words + " words: " + message.text());
            assertTrue(signals.contains(message.signal()), message.signal());
        }
    }

    @ParameterizedTest
    @FieldSource("LANGUAGES")
    void messages_theBundle_isShownWhole(Locale locale) {
        long texts = bundle(locale).keySet().stream()
                .filter(key -> key.startsWith("safety.") && key.endsWith(".text"))
                .count();
        assertEquals(texts, Notices.messages(locale).size());
    }

    @ParameterizedTest
    @FieldSource("LANGUAGES")
    void notices_firstStartAndExports_nameTheCommissionAndTheModel(Locale locale) {
        assertTrue(Notices.firstStart(locale).text().contains("US CPSC"));
        for (String text : List.of(Notices.exportLine(locale), Notices.export(locale))) {
            assertTrue(text.contains("18650"), text);
            assertTrue(text.matches("(?s).*([Tt]eaching model|Lehrmodell).*"), text);
        }
    }

    @ParameterizedTest
    @FieldSource("LANGUAGES")
    void bundle_itsWords_promiseNothing(Locale locale) {
        for (String key : bundle(locale).keySet()) {
            String text = bundle(locale).getString(key).toLowerCase(locale);
            assertFalse(text.matches(".*\\b(safe|safely|sicher|sichere[rsnm]?)\\b.*"), text);
        }
    }
}
