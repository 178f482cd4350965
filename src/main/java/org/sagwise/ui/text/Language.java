package org.sagwise.ui.text;

import java.util.Locale;

/** The language of the window. */
public final class Language {

    private Language() {}

    /**
     * The locale that belongs to a choice.
     *
     * @param tag language tag; empty for the system's language, with its way of writing numbers
     */
    public static Locale of(String tag) {
        return tag.isEmpty() ? Locale.getDefault() : Locale.forLanguageTag(tag);
    }
}
