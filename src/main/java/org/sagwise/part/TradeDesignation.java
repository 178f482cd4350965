package org.sagwise.part;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the five digits of a round cell's trade name say: two for the diameter and two for the
 * length, both in millimetres, then a 0 for round. Common practice, no source.
 *
 * @param text the digits, such as {@code 18650}
 * @param diameterMm nominal diameter (mm), 10–99
 * @param lengthMm nominal length (mm), 1–99
 */
public record TradeDesignation(String text, int diameterMm, int lengthMm) {

    private static final Pattern ROUND = Pattern.compile("([1-9]\\d)(\\d[1-9]|[1-9]0)0");

    /** Reads a trade designation; empty when the text is not one of a round cell. */
    public static Optional<TradeDesignation> parse(String text) {
        Matcher digits = ROUND.matcher(text);
        if (!digits.matches()) {
            return Optional.empty();
        }
        return Optional.of(
                new TradeDesignation(text, Integer.parseInt(digits.group(1)), Integer.parseInt(digits.group(2))));
    }
}
