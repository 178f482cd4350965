package org.sagwise.quantity;

import java.math.BigDecimal;
import java.util.Locale;

/**
 * Numbers of a scenario's keys as people read and write them: {@code 0.3}, {@code 300 mΩ} and
 * {@code 0.3 ohm} all mean the same in a field of ohms.
 *
 * @param locale language and number format
 */
public record KeyNumbers(Locale locale) {

    private static final int SHOWN_DIGITS = 4;

    private static final int MEANINGFUL_DIGITS = 3;

    /** A hand-written value has no more digits than this. */
    private static final int MOST_WRITTEN_DIGITS = 6;

    /** What a bare number under this key is in; shares and counts have no unit. */
    public static Measure measure(String key) {
        return Measure.ofKey(key).orElse(Measure.of(Unit.FRACTION));
    }

    public static String unit(String key) {
        return measure(key).scale().symbol();
    }

    /** A number as written, every digit of it. */
    public String exact(double value) {
        return QuantityFormat.forPeople(locale).number(value, Digits.all());
    }

    /** Whether a number has more digits than anyone would write: a program found it. */
    public boolean isComputed(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().precision() > MOST_WRITTEN_DIGITS;
    }

    /** A number as written; of one that was computed, the digits that mean anything. */
    public String shown(double value) {
        return isComputed(value)
                ? QuantityFormat.forPeople(locale).number(value, Digits.significant(MEANINGFUL_DIGITS))
                : exact(value);
    }

    /** A number that nobody wrote, as a hint. */
    public String roughly(double value) {
        return QuantityFormat.forPeople(locale).number(value, Digits.atMostSignificant(SHOWN_DIGITS));
    }

    /** Reads a text; the value is in the unit of the key. */
    public Parsed read(String key, String text) {
        Measure measure = measure(key);
        Parsed parsed = new QuantityParser(locale).parse(text, measure);
        return parsed instanceof Parsed.Value value
                ? new Parsed.Value(measure.scale().fromUnit(value.amount()))
                : parsed;
    }
}
