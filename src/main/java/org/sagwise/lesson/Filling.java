package org.sagwise.lesson;

import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.sagwise.quantity.QuantityFormat;

/** Fills the readings into a text: {@code {coil.power_W}} becomes what the bench says now. */
public final class Filling {

    private static final Pattern BLANK = Pattern.compile("\\{([^{}]*)\\}");

    private Filling() {}

    /** The text with every reading as people write it; a dash for one that cannot be taken. */
    public static String fill(String text, Situation situation, Locale locale) {
        return fill(text, situation::read, locale);
    }

    /** The same, from anything that can tell readings. */
    public static String fill(String text, Function<ReadingRef, OptionalDouble> readings, Locale locale) {
        QuantityFormat format = QuantityFormat.forPeople(locale);
        StringBuilder filled = new StringBuilder();
        Matcher blank = BLANK.matcher(text);
        int at = 0;
        while (blank.find()) {
            filled.append(text.substring(at, blank.start()))
                    .append(ReadingRef.parse(blank.group(1))
                            .map(ref -> print(readings, ref, format))
                            .orElse(blank.group()));
            at = blank.end();
        }
        return filled.append(text.substring(at)).toString();
    }

    private static String print(Function<ReadingRef, OptionalDouble> readings, ReadingRef ref, QuantityFormat format) {
        return format.print(readings.apply(ref), ref.unit()).replace(' ', '\u00a0');
    }

    /** What stands between braces, in order, each once. */
    static Set<String> blanks(String text) {
        Set<String> found = new LinkedHashSet<>();
        Matcher matcher = BLANK.matcher(text);
        while (matcher.find()) {
            found.add(matcher.group(1));
        }
        return found;
    }

    /** The text without what stands between braces. */
    static String withoutBlanks(String text) {
        return BLANK.matcher(text).replaceAll("");
    }

    static Optional<ReadingRef> ref(String blank) {
        return ReadingRef.parse(blank);
    }
}
