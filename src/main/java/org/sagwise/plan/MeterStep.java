package org.sagwise.plan;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The smallest step that a meter shows, as far as a reading that was written down tells it. */
public final class MeterStep {

    private static final Pattern NUMBER = Pattern.compile("\\d+(?:[.,](\\d*))?");

    private MeterStep() {}

    /**
     * The value of one in the last digit: 0.01 V for {@code 4.14 V}, 0.001 Ω for {@code 300 mΩ}.
     *
     * @param written a reading as it was written
     * @param value what it means, in its unit
     */
    public static double of(String written, double value) {
        Matcher number = NUMBER.matcher(written);
        if (!number.find()) {
            return 0;
        }
        int decimals = number.group(1) == null ? 0 : number.group(1).length();
        double step = BigDecimal.ONE.movePointLeft(decimals).doubleValue();
        double bare = Double.parseDouble(number.group().replace(',', '.'));
        return bare == 0 ? step : step * Math.abs(value) / bare;
    }
}
