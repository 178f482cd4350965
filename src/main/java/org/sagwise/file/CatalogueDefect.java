package org.sagwise.file;

import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;

/**
 * Something wrong in a catalogue file.
 *
 * @param file name of the file
 * @param place where in it: a path such as {@code [3].internal_mohm}, or line and column where the
 *     file is no JSON; empty for the file as a whole
 * @param problem what is wrong
 * @param details what the message about it names
 */
public record CatalogueDefect(String file, String place, Problem problem, List<String> details) {

    private static final String BUNDLE = "org.sagwise.texts.catalogue";

    /** The kinds of defect; each has a text of its own. */
    public enum Problem {
        NOT_FOUND("missing-file"),
        NOT_READABLE("unreadable-file"),
        NOT_JSON("not-json"),
        NOT_A_LIST("not-a-list"),
        NOT_AN_OBJECT("not-an-object"),
        MISSING("missing-key"),
        UNKNOWN_KEY("unknown-key"),
        NOT_A_TEXT("not-a-text"),
        NOT_A_NUMBER("not-a-number"),
        NOT_ABOVE_ZERO("not-above-zero"),
        BELOW_ZERO("below-zero"),
        NOT_WHOLE("not-whole"),
        OUT_OF_RANGE("out-of-range"),
        NOT_A_TABLE("not-a-table"),
        UNKNOWN_VALUE("unknown-value"),
        BAD_ID("bad-id"),
        TWICE("twice"),
        ONE_LANGUAGE("one-language"),
        NO_SOURCE("no-source"),
        SOURCE_OF_NOTHING("source-of-nothing"),
        ONE_OF("one-of"),
        REFUSED("refused");

        private final String key;

        Problem(String key) {
            this.key = key;
        }

        String key() {
            return key;
        }
    }

    public CatalogueDefect {
        details = List.copyOf(details);
    }

    /** Where it is, what is wrong and what would be right, in the language of {@code locale}. */
    public String describe(Locale locale) {
        ResourceBundle texts = ResourceBundle.getBundle(
                BUNDLE, locale, ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
        String message = new MessageFormat(texts.getString(problem.key()), locale).format(details.toArray());
        return place.isEmpty() ? file + ": " + message : file + ", " + place + ": " + message;
    }
}
