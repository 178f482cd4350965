package org.sagwise.ui.text;

import java.util.Locale;
import java.util.regex.Pattern;
import org.sagwise.quantity.Digits;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.text.Texts;

/** The words and numbers of the window, in one language. */
public final class Wording {

    private static final Digits LIMIT = Digits.atMostSignificant(3);
    private static final Digits ONE_DECIMAL = Digits.decimals(1);
    private static final Digits TWO_DECIMALS = Digits.decimals(2);

    /** What the key is called that other systems have for what the Command key does on a Mac. */
    private static final Pattern CONTROL = Pattern.compile("\\b(Ctrl|Strg)\\b");

    private final Texts texts;
    private final QuantityFormat numbers;

    private Wording(Texts texts, QuantityFormat numbers) {
        this.texts = texts;
        this.numbers = numbers;
    }

    public static Wording in(Locale locale) {
        return new Wording(Texts.in("ui", locale), QuantityFormat.forPeople(locale));
    }

    public Locale locale() {
        return texts.locale();
    }

    /** The sentence under a key of the bundle {@code ui}, filled in. */
    public String say(String key, Object... words) {
        return forKeysOf(System.getProperty("os.name", ""), texts.say(key, words));
    }

    /** A sentence that names keys, for the keyboards of a system: on a Mac, Command stands for Control. */
    public static String forKeysOf(String system, String sentence) {
        return system.startsWith("Mac") ? CONTROL.matcher(sentence).replaceAll("Cmd") : sentence;
    }

    /** A quantity with its unit, in the digits of the house. */
    public String quantity(double value, Unit unit) {
        return numbers.print(value, unit);
    }

    /** Volts for a scale: one decimal. */
    public String volts(double value) {
        return numbers.print(value, Unit.VOLT.base(), ONE_DECIMAL);
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
        return numbers.number(value, Math.abs(largest) < 100 ? TWO_DECIMALS : ONE_DECIMAL);
    }
}
