package org.sagwise.text;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * A text of a lesson or of the catalogue in the languages in which somebody has written it.
 *
 * @param byLanguage the text by the code of its language; English is among them, and none is blank
 */
public record LocalText(Map<String, String> byLanguage) {

    public LocalText {
        byLanguage = Collections.unmodifiableMap(new LinkedHashMap<>(byLanguage));
        if (!byLanguage.containsKey(Languages.ENGLISH)
                || byLanguage.values().stream().anyMatch(String::isBlank)) {
            throw new IllegalArgumentException("a text needs English, and words in each of its languages");
        }
    }

    /** The same text for every language: a name or number that needs no translation. */
    public static LocalText same(String text) {
        return new LocalText(Map.of(Languages.ENGLISH, text));
    }

    /** The text in English. */
    public String english() {
        return byLanguage.get(Languages.ENGLISH);
    }

    /** The text in the language of {@code locale}; English where there is no translation. */
    public String in(Locale locale) {
        return byLanguage.getOrDefault(locale.getLanguage(), english());
    }
}
