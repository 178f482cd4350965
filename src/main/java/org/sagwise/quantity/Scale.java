package org.sagwise.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * One way of writing a {@link Unit}: {@code mΩ} for the ohm, {@code min} for the second.
 *
 * <p>Value in the unit = written number × factor + offset. The factor is decimal, so that {@code 30
 * mΩ} becomes the double nearest to 0.03 and not a neighbour of it.
 *
 * @param symbol as printed for people, e.g. {@code mΩ}
 * @param plain as printed where only ASCII is wanted, e.g. {@code mohm}
 * @param factor size of this scale in the unit; positive
 * @param offset zero but for temperature scales
 * @param aliases further spellings that are read, never printed
 */
public record Scale(String symbol, String plain, BigDecimal factor, BigDecimal offset, List<String> aliases) {

    /** Digits that tell every double from its neighbours. */
    private static final MathContext ROUND_TRIP = new MathContext(17);

    public Scale {
        if (factor.signum() <= 0) {
            throw new IllegalArgumentException("factor of " + symbol + " is not positive");
        }
        aliases = List.copyOf(aliases);
    }

    static Scale of(String symbol, String plain, String factor, String... aliases) {
        return new Scale(symbol, plain, new BigDecimal(factor), BigDecimal.ZERO, List.of(aliases));
    }

    /** The value in the unit of a number written in this scale; may be infinite if too large. */
    public double toUnit(BigDecimal written) {
        return written.multiply(factor).add(offset).doubleValue();
    }

    /**
     * The value in the unit of a number written in this scale.
     *
     * @param written any number; NaN and infinities pass through
     */
    public double toUnit(double written) {
        return Double.isFinite(written) ? toUnit(BigDecimal.valueOf(written)) : written;
    }

    /**
     * What is to be written in this scale for a value in the unit.
     *
     * @param value any number; NaN and infinities pass through
     */
    public double fromUnit(double value) {
        return Double.isFinite(value) ? exactFromUnit(value).doubleValue() : value;
    }

    /** As {@link #fromUnit}, from the shortest decimal that stands for the value. */
    BigDecimal exactFromUnit(double value) {
        return BigDecimal.valueOf(value).subtract(offset).divide(factor, ROUND_TRIP);
    }

    /** As {@link #fromUnit}, but for the last digits of the double, where {@link #isNearByDoubles}. */
    double nearlyFromUnit(double value) {
        return value / factor.doubleValue();
    }

    /** Whether nothing cancels out and nothing becomes too small for a double. */
    boolean isNearByDoubles(double value) {
        return offset.signum() == 0 && (value == 0 || Math.abs(value) > 1e-200);
    }

    boolean isSpelled(String text) {
        return spellings().contains(text);
    }

    boolean isSpelledIgnoringCase(String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        return spellings().stream().anyMatch(s -> s.toLowerCase(Locale.ROOT).equals(lower));
    }

    private List<String> spellings() {
        List<String> all = new ArrayList<>(aliases);
        all.add(symbol);
        all.add(plain);
        return all;
    }
}
