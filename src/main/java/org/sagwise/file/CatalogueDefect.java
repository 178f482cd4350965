package org.sagwise.file;

import java.util.Locale;
import org.sagwise.scenario.Fault;
import org.sagwise.scenario.Finding;

/**
 * Something wrong in a catalogue file.
 *
 * @param file name of the file
 * @param finding what is wrong and where
 */
public record CatalogueDefect(String file, Finding finding) {

    /** What can be wrong with a catalogue beside what can be wrong with any JSON, or with keys wherever they stand. */
    public enum Problem implements Fault {
        NOT_FOUND("missing-file"),
        NOT_READABLE("unreadable-file"),
        NOT_A_LIST("not-a-list"),
        NOT_A_TABLE("not-a-table"),
        BAD_ID("bad-id"),
        TWICE("twice"),
        ONE_LANGUAGE("one-language"),
        NO_SOURCE("no-source"),
        SOURCE_OF_NOTHING("source-of-nothing"),
        REFUSED("refused");

        private final String key;

        Problem(String key) {
            this.key = key;
        }

        @Override
        public String key() {
            return key;
        }

        @Override
        public String bundle() {
            return "catalogue";
        }
    }

    /** Where in the file: a path such as {@code [3].internal_mohm}; empty for the file as a whole. */
    public String place() {
        return finding.place();
    }

    public Fault problem() {
        return finding.problem();
    }

    /** Where it is, what is wrong and what would be right, in the language of {@code locale}. */
    public String describe(Locale locale) {
        if (finding.position().isPresent()) {
            return file + ", " + finding.text(locale);
        }
        return file + (place().isEmpty() ? "" : ", " + place()) + ": " + finding.sentence(locale);
    }
}
