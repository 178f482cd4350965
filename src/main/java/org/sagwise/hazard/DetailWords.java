package org.sagwise.hazard;

import java.util.Optional;
import org.sagwise.quantity.Measure;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.scenario.Names;
import org.sagwise.text.Texts;

/**
 * Says the details of a caution.
 *
 * @param texts words of the language
 * @param format how it writes numbers
 */
record DetailWords(Texts texts, QuantityFormat format) {

    /**
     * A detail in words; empty if its number is not known.
     *
     * @throws IllegalArgumentException if there is no detail of this name
     */
    Optional<String> say(String name, Object detail) {
        if (detail == null) {
            throw new IllegalArgumentException("no detail " + name);
        }
        if (detail instanceof Double number) {
            return number(name.endsWith("Mm") ? number / 1000 : number, unit(name));
        }
        return Optional.of(word(detail));
    }

    /** A number with its unit; empty if it is not known. */
    Optional<String> number(double value, Unit unit) {
        return Double.isNaN(value) ? Optional.empty() : Optional.of(format.print(value, unit));
    }

    /** A number with the unit of this symbol; empty if it is not known. */
    Optional<String> number(double value, String symbol) {
        return Unit.ofSymbol(symbol).flatMap(unit -> number(value, unit));
    }

    /** What is said of a number that is not known, where a sentence has no words of its own. */
    String unknown() {
        return texts.raw("unknown");
    }

    /**
     * When something shows.
     *
     * @param when the name of a {@link Caution.When}, or JOINED where there is no button
     */
    String when(String when) {
        return texts.raw("when." + when);
    }

    private static Unit unit(String name) {
        return Measure.ofName(name)
                .map(Measure::unit)
                .orElseThrow(() -> new IllegalArgumentException("no unit in " + name));
    }

    /** A name, a text, or a list of them. */
    String word(Object detail) {
        return Names.in(format.locale()).word(detail);
    }
}
