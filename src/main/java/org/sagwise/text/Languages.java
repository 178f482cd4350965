package org.sagwise.text;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * The languages that the program speaks: the one list of them, read from {@code languages.txt}
 * beside the bundles, so that a translation adds its texts and one line.
 */
public final class Languages {

    /** English, in which a text stands that is not translated. */
    public static final String ENGLISH = "en";

    private static final String NEEDED = " needed";

    private static final List<String> LINES = read();

    private static final List<String> ALL =
            LINES.stream().map(line -> line.replace(NEEDED, "")).toList();

    private Languages() {}

    /** The code of each by ISO 639, as in {@code de}; English first. */
    public static List<String> all() {
        return ALL;
    }

    /** Those in which every text of a lesson and of the catalogue has to stand. */
    public static List<String> needed() {
        return ALL.stream().filter(code -> LINES.contains(code + NEEDED)).toList();
    }

    /** Each of them as a locale. */
    public static List<Locale> locales() {
        return ALL.stream().map(Locale::new).toList();
    }

    /** Whether people of this locale are spoken to in their own language. */
    public static boolean has(Locale locale) {
        return ALL.contains(locale.getLanguage());
    }

    private static List<String> read() {
        try (InputStream file = Languages.class.getResourceAsStream("/org/sagwise/texts/languages.txt");
                BufferedReader reader = new BufferedReader(new InputStreamReader(file, StandardCharsets.UTF_8))) {
            Stream<String> lines = reader.lines().map(String::strip);
            return lines.filter(line -> !line.isEmpty() && !line.startsWith("#"))
                    .toList();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
