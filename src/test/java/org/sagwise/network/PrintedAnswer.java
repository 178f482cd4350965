package org.sagwise.network;

import java.math.BigDecimal;
import java.util.Map;

/**
 * An answer as a book prints it: what, how much in SI units, and how far off a right value may be,
 * which is half a unit of the last printed digit unless the line gives a tolerance.
 */
record PrintedAnswer(String quantity, double value, double tolerance) {
    private static final Map<String, Double> PREFIX = Map.of("", 1.0, "k", 1e3, "m", 1e-3, "u", 1e-6);

    static PrintedAnswer parse(String line) {
        String[] side = line.split(" = ");
        String[] word = side[1].split(" ");
        BigDecimal number = new BigDecimal(word[0]);
        double unit = PREFIX.get(word[1].replaceFirst("(A|V|W|ohm)$", ""));
        double halfDigit = 0.5 * Math.pow(10, -number.scale());
        double tolerance = word.length > 2 ? Double.parseDouble(word[3]) : halfDigit * unit * (1 + 1e-9);
        return new PrintedAnswer(side[0], number.doubleValue() * unit, tolerance);
    }
}
