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

    /** The same where its detail is a clause, which is called differently in each language. */
    Fault of(String clause) {
        return new OfClause(this, clause);
    }

    @Override
    public String bundle() {
        return "words";
    }

    private record OfClause(WordsFault fault, String clause) implements Fault {
        @Override
        public String name() {
            return fault.name();
        }

        @Override
        public String bundle() {
            return fault.bundle();
        }

        @Override
        public String sentence(String place, List<String> details, Locale locale) {
            Texts texts = Texts.in(bundle(), locale);
            return texts.say(key(), texts.say("clause." + clause));
        }
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
