package org.sagwise.file;

import java.math.BigDecimal;
import java.math.MathContext;

/** Writes the single values of JSON: text, numbers, {@code true}, {@code false}, {@code null}. */
public final class JsonWords {

    /** Numbers with more zeros than this are written with an exponent. */
    private static final int MOST_ZEROS = 12;

    private JsonWords() {}

    static String scalar(Object value) {
        if (value instanceof String text) {
            return text(text);
        } else if (value instanceof WrittenNumber number) {
            return number.toString();
        } else if (value instanceof Number number) {
            return number(number.doubleValue());
        }
        return String.valueOf(value);
    }

    /**
     * The shortest number that reads back as the same double: {@code 1}, {@code 0.3}, {@code
     * 2.5E-13}.
     *
     * @throws IllegalArgumentException for NaN and infinities, which JSON cannot hold
     */
    public static String number(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("JSON cannot hold " + value);
        } else if (value == 0) {
            return 1 / value < 0 ? "-0" : "0";
        }
        BigDecimal shortest = shortest(value).stripTrailingZeros();
        boolean handy = shortest.scale() > -MOST_ZEROS && shortest.scale() < 2 * MOST_ZEROS;
        return handy ? shortest.toPlainString() : shortest.toString();
    }

    /** Any double but the very smallest (below 1e-292, which may get more digits than they need) is had so. */
    private static BigDecimal shortest(double value) {
        BigDecimal exact = new BigDecimal(value);
        for (int digits = 15; digits < 17; digits++) {
            BigDecimal rounded = exact.round(new MathContext(digits));
            if (rounded.doubleValue() == value) {
                return rounded;
            }
        }
        return exact.round(new MathContext(17));
    }

    /** Text in double quotes; only what must be escaped is. */
    public static String text(String text) {
        StringBuilder out = new StringBuilder(text.length() + 2).append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '"' -> out.append("\\\"");
                case '\\' -> out.append("\\\\");
                case '\n' -> out.append("\\n");
                case '\r' -> out.append("\\r");
                case '\t' -> out.append("\\t");
                default -> {
                    if (c < ' ' || c == '\u007f' || isHalf(text, i)) {
                        // Not by String.format, which alone makes the script of a live page some thousand bytes larger.
                        out.append("\\u").append(Integer.toHexString(0x10000 + c), 1, 5);
                    } else {
                        out.append(c);
                    }
                }
            }
        }
        return out.append('"').toString();
    }

    /** Half of a surrogate pair without its other half: UTF-8 cannot hold it. */
    private static boolean isHalf(String text, int i) {
        char c = text.charAt(i);
        if (Character.isHighSurrogate(c)) {
            return i + 1 == text.length() || !Character.isLowSurrogate(text.charAt(i + 1));
        }
        return Character.isLowSurrogate(c) && (i == 0 || !Character.isHighSurrogate(text.charAt(i - 1)));
    }
}
