package org.sagwise.quantity;

import java.util.List;
import java.util.Locale;

/** Spans of time as people write them: {@code 3s}, {@code 90 min}, {@code 1 h 12 min}. */
public final class Durations {

    private static final int MINUTE_S = 60;
    private static final int HOUR_S = 3600;

    private Durations() {}

    /**
     * Reads a duration for the command line or a field; a bare number counts seconds.
     *
     * @param text e.g. {@code 3s}, {@code 0.5 s}, {@code 90 min}, {@code 1h30min}
     * @param locale whose decimal mark is expected
     * @return seconds, zero or more
     */
    public static Parsed parse(String text, Locale locale) {
        Parsed parsed = new QuantityParser(locale).parse(text, Unit.SECOND);
        if (parsed instanceof Parsed.Value value && value.amount() < 0) {
            return new Parsed.Refused(Parsed.Reason.NEGATIVE_DURATION, List.of(Parsed.Detail.word(text.strip())));
        }
        return parsed;
    }

    /** Prints from a minute up in minutes and seconds, from an hour up in hours and minutes. */
    static String print(double seconds, QuantityFormat format) {
        double size = Math.abs(seconds);
        boolean hours = Math.rint(size) >= HOUR_S;
        double major = hours ? HOUR_S : MINUTE_S;
        double minor = hours ? MINUTE_S : 1;
        double wholeMinors = Math.floor(size / minor + 0.5);
        double minorsInMajor = major / minor;
        double majors = Math.floor(wholeMinors / minorsInMajor);
        double rest = wholeMinors - majors * minorsInMajor;
        Digits whole = Digits.decimals(0);
        String first = format.number(Math.copySign(majors, seconds), whole) + (hours ? " h" : " min");
        return rest == 0 ? first : first + " " + format.number(rest, whole) + (hours ? " min" : " s");
    }
}
