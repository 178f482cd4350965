package org.sagwise.web.engine;

import java.util.Locale;
import org.sagwise.quantity.Digits;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.report.course.ClockTexts;
import org.sagwise.text.Texts;

/**
 * Words and numbers of the live page in one language. What the window says as well stands in its bundles.
 *
 * @param page words of the page alone
 * @param ui words that the window has too
 * @param clock words about time, and how it is written
 * @param numbers how numbers are written
 */
public record Words(Texts page, Texts ui, ClockTexts clock, QuantityFormat numbers) {

    private static final Digits LIMIT = Digits.atMostSignificant(3);

    public static Words in(Locale locale) {
        return new Words(
                Texts.in("page", locale),
                Texts.in("ui", locale),
                new ClockTexts(locale),
                QuantityFormat.forPeople(locale));
    }

    public Locale locale() {
        return page.locale();
    }

    public String say(String key, Object... words) {
        return page.say(key, words);
    }

    /** A quantity with its unit, in the digits of the house. */
    public String quantity(double value, Unit unit) {
        return numbers.print(value, unit);
    }

    /** A limit with its unit: no digits that nobody set. */
    public String limit(double value, Unit unit) {
        return numbers.print(value, unit.base(), LIMIT);
    }

    /**
     * A number for a column of numbers, without a unit.
     *
     * @param largest the largest number of the column; all get the decimals that it can bear
     */
    public String inColumn(double value, double largest) {
        return numbers.number(value, Digits.decimals(Math.abs(largest) < 100 ? 2 : 1));
    }
}
