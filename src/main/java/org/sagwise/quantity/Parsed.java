package org.sagwise.quantity;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.sagwise.text.Texts;

/** What came of reading a quantity that a person wrote. */
public sealed interface Parsed {

    /** The value, if there is one. */
    default OptionalDouble value() {
        return this instanceof Value value ? OptionalDouble.of(value.amount()) : OptionalDouble.empty();
    }

    /**
     * It was understood.
     *
     * @param amount the value in the unit that was asked for; finite
     */
    record Value(double amount) implements Parsed {}

    /**
     * It was not understood.
     *
     * @param reason what is wrong
     * @param details what the sentence of that reason is filled with, ready to show
     */
    record Refused(Reason reason, List<Detail> details) implements Parsed {

        public Refused {
            details = List.copyOf(details);
        }

        /** A sentence for people: what is wrong, and an example of what would be right. */
        public String text(Locale locale) {
            Texts texts = Texts.in("quantity", locale);
            Object[] words = details.stream().map(detail -> detail.in(texts)).toArray();
            return texts.say(reason.textKey(), words);
        }
    }

    /** A word of a sentence: either the same in every language or the key of a text. */
    record Detail(String word, Kind kind) {

        enum Kind {
            AS_IT_IS,
            TEXT_KEY
        }

        static Detail word(String word) {
            return new Detail(word, Kind.AS_IT_IS);
        }

        static Detail measured(Unit unit) {
            return new Detail(unit.textKey(), Kind.TEXT_KEY);
        }

        String in(Texts texts) {
            return kind == Kind.AS_IT_IS ? word : texts.say(word);
        }
    }

    /** Why a text is no quantity. */
    enum Reason {
        /** Nothing is written. */
        EMPTY,
        /** No number stands where one should. */
        NOT_A_NUMBER,
        /** A comma or point that may stand before decimals or between thousands. */
        AMBIGUOUS_NUMBER,
        /** A unit that no quantity here is measured in. */
        UNKNOWN_UNIT,
        /** A known unit, but of something else than is asked for. */
        WRONG_UNIT,
        /** Too large for a computer's number. */
        TOO_LARGE,
        /** A duration below zero. */
        NEGATIVE_DURATION,
        /** Parts of a duration in the wrong order, such as {@code 5 s 2 min}. */
        MIXED_DURATION;

        String textKey() {
            return "refused." + name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }
}
