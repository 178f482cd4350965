package org.sagwise.report.course;

import java.text.DecimalFormatSymbols;
import java.util.Locale;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.reading.Bench;
import org.sagwise.run.RunTexts;
import org.sagwise.scenario.Names;
import org.sagwise.scenario.Part;
import org.sagwise.text.Texts;

/** The words of the clock, and how it writes time. */
public final class ClockTexts {

    private static final long TENTHS_PER_MINUTE = 600;
    private static final long TENTHS_PER_HOUR = 36_000;

    private final Texts texts;

    public ClockTexts(Locale locale) {
        texts = Texts.in("clock", locale);
    }

    /** The sentence under a key of the bundle {@code clock}, filled in. */
    public String word(String key, Object... words) {
        return texts.say(key, words);
    }

    /** What curves and tables call a part. */
    public String label(Part part) {
        return Names.in(texts.locale()).label(part);
    }

    public Locale locale() {
        return texts.locale();
    }

    /** Sentences about what happens on a bench. */
    public RunTexts about(Bench bench) {
        return new RunTexts(bench, QuantityFormat.forPeople(texts.locale()));
    }

    /**
     * A moment as a clock has it: {@code 0:02.4} or {@code 1:07:30}. What has not passed in full is
     * not shown.
     */
    public String time(double seconds) {
        long tenths = (long) Math.floor(seconds * 10 + 1e-6);
        long minutes = tenths / TENTHS_PER_MINUTE;
        if (tenths < TENTHS_PER_HOUR) {
            char mark = DecimalFormatSymbols.getInstance(texts.locale()).getDecimalSeparator();
            long rest = tenths % TENTHS_PER_MINUTE;
            return minutes + ":" + two(rest / 10) + mark + rest % 10;
        }
        return minutes / 60 + ":" + two(minutes % 60) + ":" + two(tenths % TENTHS_PER_MINUTE / 10);
    }

    private static String two(long number) {
        return (number < 10 ? "0" : "") + number;
    }

    /** A round moment at an axis: without tenths or seconds unless it needs them. */
    public String shortTime(double seconds) {
        long tenths = Math.round(seconds * 10);
        String exact = time(seconds);
        if (tenths < TENTHS_PER_HOUR) {
            return tenths % 10 == 0 ? exact.substring(0, exact.length() - 2) : exact;
        }
        return tenths % TENTHS_PER_MINUTE == 0 ? word("curves.hours", exact.substring(0, exact.length() - 3)) : exact;
    }
}
