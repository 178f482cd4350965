package org.sagwise.text;

import java.util.Locale;

/**
 * A short text of the catalogue in every language the program speaks.
 *
 * @param en English, not blank
 * @param de German, not blank
 */
public record LocalText(String en, String de) {

    public LocalText {
        if (en.isBlank() || de.isBlank()) {
            throw new IllegalArgumentException("a text needs both languages");
        }
    }

    /** The same text for every language: a name or number that needs no translation. */
    public static LocalText same(String text) {
        return new LocalText(text, text);
    }

    /** The text in the language of {@code locale}; English where there is no translation. */
    public String in(Locale locale) {
        return "de".equals(locale.getLanguage()) ? de : en;
    }
}
