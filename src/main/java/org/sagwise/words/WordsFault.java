package org.sagwise.words;

import java.util.List;
import java.util.Locale;
import org.sagwise.quantity.Parsed;
import org.sagwise.scenario.Fault;
import org.sagwise.text.Texts;

/** What can be wrong with a line of words; each has a sentence in the bundle {@code words}. */
enum WordsFault implements Fault {
    EMPTY,
    TOO_LONG,
    UNKNOWN,
    UNKNOWN_NEAR,
    OUT_OF_PLACE,
    NO_UNIT,
    NOT_OF,
    NO_VALUE,
    TWICE,
    NO_SUCH_CELL,
    NO_LAYOUT,
    NO_SUCH_COIL,
    NO_SUCH_PLACE,
    TOO_MANY_CELLS,
    WHICH_LAYOUT,
    WOUND_LACKS,
    NO_TEMPERATURE,
    WHICH_JOINT,
    NO_COIL_TO_SHORT;

    /**
     * Before the name of a clause, which is said differently in each language. No word of a line begins with a line
     * break, so that none is taken for such a name.
     */
    private static final String CLAUSE = "\nclause.";

    /** The detail that is said as the name of a clause. */
    static String clause(String word) {
        return CLAUSE + word;
    }

    @Override
    public String bundle() {
        return "words";
    }

    @Override
    public String sentence(String place, List<String> details, Locale locale) {
        Texts texts = Texts.in(bundle(), locale);
        Object[] words = details.stream()
                .map(detail -> detail.startsWith(CLAUSE) ? texts.say(detail.strip()) : detail)
                .toArray();
        return texts.say(key(), words);
    }

    /** A number that cannot be read: the sentence of whoever reads numbers. */
    record BadNumber(Parsed.Refused refused) implements Fault {
        @Override
        public String name() {
            return refused.reason().name();
        }

        @Override
        public String bundle() {
            return "quantity";
        }

        @Override
        public String sentence(String place, List<String> details, Locale locale) {
            return refused.text(locale);
        }
    }
}
