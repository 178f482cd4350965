package org.sagwise.quantity;

import java.math.BigDecimal;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.OptionalDouble;
import org.sagwise.text.Signs;

/**
 * Prints quantities: {@code 4.20 V}, {@code 17.6 W}, {@code 30 mΩ}, {@code 2 min 5 s}.
 *
 * <p>A value that is not known (NaN) prints as a dash, never as a number; a value that rounds to
 * zero has no sign; thousands are not marked. Immutable.
 *
 * @param locale whose decimal mark is used
 * @param signs whether Ω, µ, ° and the true minus sign may be used
 */
public record QuantityFormat(Locale locale, Signs signs) {

    /** For people who read this language. */
    public static QuantityFormat forPeople(Locale locale) {
        return new QuantityFormat(locale, Signs.PRINT);
    }

    /** ASCII with a decimal point, for terminals and files that bear no more. */
    public static QuantityFormat ascii() {
        return new QuantityFormat(Locale.ROOT, Signs.ASCII);
    }

    /**
     * A value as the house prints this unit, with a sensible prefix. What sums of volts, amps and
     * watts leave over where they cancel prints as zero.
     *
     * @param value in the unit; NaN for "not known"
     */
    public String print(double value, Unit unit) {
        if (unit == Unit.SECOND && Math.abs(value) >= 59.95 && Double.isFinite(value)) {
            return Durations.print(value, this);
        }
        double told = HouseStyle.isDust(value, unit) ? 0 : value;
        HouseStyle.Step chosen = HouseStyle.of(told, unit);
        return print(told, chosen.scale(), chosen.digits());
    }

    /** As {@link #print(double, Unit)}; an absent value prints as a dash. */
    public String print(OptionalDouble value, Unit unit) {
        return print(value.orElse(Double.NaN), unit);
    }

    /**
     * A value in one scale with the digits asked for.
     *
     * @param value in the unit to which the scale belongs
     */
    public String print(double value, Scale scale, Digits digits) {
        if (Double.isNaN(value)) {
            return number(value, digits);
        }
        String symbol = signs == Signs.PRINT ? scale.symbol() : scale.plain();
        String number = Double.isFinite(value) ? finite(value, scale, digits) : number(value, digits);
        return symbol.isEmpty() ? number : number + " " + symbol;
    }

    /** A bare number with the digits asked for. */
    public String number(double value, Digits digits) {
        if (Double.isNaN(value)) {
            return signs == Signs.PRINT ? "—" : "-";
        }
        if (Double.isInfinite(value)) {
            String infinity = signs == Signs.PRINT ? "∞" : "inf";
            return value < 0 ? minus() + infinity : infinity;
        }
        String quick = QuickDigits.of(value, digits);
        return quick.isEmpty() ? exact(BigDecimal.valueOf(value), digits) : signed(quick);
    }

    private String finite(double value, Scale scale, Digits digits) {
        String quick = scale.isNearByDoubles(value) ? QuickDigits.of(scale.nearlyFromUnit(value), digits) : "";
        return quick.isEmpty() ? exact(scale.exactFromUnit(value), digits) : signed(quick);
    }

    /** A number with point and hyphen as this language and these signs have them. */
    private String signed(String plain) {
        char mark = DecimalFormatSymbols.getInstance(locale).getDecimalSeparator();
        String unsigned = plain.charAt(0) == '-' ? plain.substring(1) : plain;
        String marked = mark == '.' ? unsigned : unsigned.replace('.', mark);
        return unsigned.length() < plain.length() ? minus() + marked : marked;
    }

    /** A bare number with the digits asked for, by decimals of any length. */
    String exact(BigDecimal value, Digits digits) {
        BigDecimal rounded = digits.round(value);
        String unsigned = isUnwieldy(rounded)
                ? value.abs().stripTrailingZeros().toString()
                : rounded.abs().toPlainString();
        return signed(rounded.signum() < 0 ? "-" + unsigned : unsigned);
    }

    /** Whether a row of zeros would be longer than anyone reads. */
    private static boolean isUnwieldy(BigDecimal value) {
        return value.precision() - value.scale() > Digits.LONGEST_ROW || value.scale() > Digits.LONGEST_ROW;
    }

    private String minus() {
        return signs == Signs.PRINT ? "\u2212" : "-";
    }
}
