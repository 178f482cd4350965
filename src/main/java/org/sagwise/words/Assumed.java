package org.sagwise.words;

import java.util.List;
import java.util.Locale;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.text.Texts;

/**
 * Something that a line did not say, and what was taken for it.
 *
 * @param key of its sentence in the bundle {@code words}, behind {@code assumed.}
 * @param details what fills its blanks
 */
public record Assumed(String key, List<Detail> details) {

    public Assumed {
        details = List.copyOf(details);
    }

    /** A name or an amount. */
    sealed interface Detail {

        /** A name, the same in every language. */
        record Name(String name) implements Detail {}

        /**
         * An amount.
         *
         * @param value in the unit
         */
        record Amount(double value, Unit unit) implements Detail {}

        static Detail of(String name) {
            return new Name(name);
        }

        static Detail of(double value, Unit unit) {
            return new Amount(value, unit);
        }

        private String in(QuantityFormat format) {
            return this instanceof Amount amount ? format.print(amount.value(), amount.unit()) : ((Name) this).name();
        }
    }

    static Assumed of(String key, Detail... details) {
        return new Assumed(key, List.of(details));
    }

    /** A sentence for people. */
    public String text(Locale locale) {
        return text(locale, QuantityFormat.forPeople(locale));
    }

    /** A sentence for people, its amounts printed in that way. */
    public String text(Locale locale, QuantityFormat format) {
        return Texts.in("words", locale)
                .say(
                        "assumed." + key,
                        details.stream().map(detail -> detail.in(format)).toArray());
    }
}
