package org.sagwise.quantity;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Durations as a running clock shows them: {@code 1:31:10} or {@code 2:05.4}. */
final class ClockTime {

    private static final Pattern SHOWN = Pattern.compile("(?:(\\d{1,4}):)?(\\d{1,4}):([0-5]\\d(?:[.,]\\d{1,9})?)");

    private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

    private ClockTime() {}

    /** Seconds; empty for a text that is written otherwise. */
    static Optional<BigDecimal> seconds(String text) {
        Matcher shown = SHOWN.matcher(text);
        if (!shown.matches()) {
            return Optional.empty();
        }
        BigDecimal hours = shown.group(1) == null ? BigDecimal.ZERO : new BigDecimal(shown.group(1));
        BigDecimal minutes = new BigDecimal(shown.group(2));
        if (shown.group(1) != null && minutes.compareTo(SIXTY) >= 0) {
            return Optional.empty();
        }
        return Optional.of(hours.multiply(SIXTY)
                .add(minutes)
                .multiply(SIXTY)
                .add(new BigDecimal(shown.group(3).replace(',', '.'))));
    }
}
