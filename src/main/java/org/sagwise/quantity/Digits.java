package org.sagwise.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * How many digits of a number are shown. Halves are rounded away from zero, as people do.
 *
 * @param rule whether the count is of significant digits or of decimals
 * @param count how many
 * @param zeros whether zeros at the end of the decimals stay
 */
public record Digits(Rule rule, int count, Zeros zeros) {

    /** What is counted. */
    public enum Rule {
        SIGNIFICANT,
        DECIMALS,
        ALL
    }

    /** Whether zeros at the end of the decimals stay. */
    public enum Zeros {
        KEPT,
        DROPPED
    }

    /** Longer rows of digits than this are printed with an exponent. */
    static final int LONGEST_ROW = 21;

    public Digits {
        if (count < 0 || (rule == Rule.SIGNIFICANT && count == 0)) {
            throw new IllegalArgumentException("cannot show " + count + " digits");
        }
    }

    /** So many significant digits: {@code 17.6}, {@code 2.10}. */
    public static Digits significant(int count) {
        return new Digits(Rule.SIGNIFICANT, count, Zeros.KEPT);
    }

    /** At most so many significant digits: {@code 30}, {@code 12.5}. */
    public static Digits atMostSignificant(int count) {
        return new Digits(Rule.SIGNIFICANT, count, Zeros.DROPPED);
    }

    /** So many decimals: {@code 4.20}. */
    public static Digits decimals(int count) {
        return new Digits(Rule.DECIMALS, count, Zeros.KEPT);
    }

    /** At most so many decimals. */
    public static Digits atMostDecimals(int count) {
        return new Digits(Rule.DECIMALS, count, Zeros.DROPPED);
    }

    /** Every digit needed to read back the very same value, and none more. */
    public static Digits all() {
        return new Digits(Rule.ALL, 0, Zeros.DROPPED);
    }

    BigDecimal round(BigDecimal value) {
        BigDecimal rounded = switch (rule) {
            case SIGNIFICANT -> significant(value);
            case DECIMALS -> value.setScale(count, RoundingMode.HALF_UP);
            case ALL -> value;
        };
        BigDecimal kept = zeros == Zeros.DROPPED ? rounded.stripTrailingZeros() : rounded;
        return kept.scale() < 0 && kept.scale() > -LONGEST_ROW ? kept.setScale(0) : kept;
    }

    private BigDecimal significant(BigDecimal value) {
        if (value.signum() == 0) {
            return value.setScale(count - 1, RoundingMode.HALF_UP);
        }
        int before = value.precision() - value.scale();
        BigDecimal rounded = value.setScale(count - before, RoundingMode.HALF_UP);
        // 99.96 has become 100.0.
        return rounded.precision() > count ? rounded.setScale(count - before - 1, RoundingMode.HALF_UP) : rounded;
    }
}
