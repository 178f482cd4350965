package org.sagwise.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import org.sagwise.text.Languages;

/**
 * The scenarios that come with the program: benches of the evening class, in the order in which a
 * newcomer may want to look at them. The sound ones come first.
 */
public final class DemoScenarios {

    /** The one that the window opens with. */
    public static final String OPENING = "two-cells-side-by-side";

    private static final String FOLDER = "/org/sagwise/demo/";

    private static final String ENDING = ".sagwise.json";

    private static final List<String> NAMES = List.of(
            "one-cell-on-half-an-ohm",
            OPENING,
            "two-in-a-row",
            "two-side-by-side-ideal",
            "two-in-a-row-ideal",
            "bench-check",
            "two-by-two",
            "regulated-board",
            "thin-wire",
            "too-few-ohms",
            "re-wrapped-cell",
            "protected-pair-asked-too-much",
            "old-and-new-in-a-row",
            "flat-beside-full",
            "row-of-two-one-reversed",
            "row-of-three-one-reversed",
            "side-by-side-one-reversed",
            "side-by-side-with-reverse-guards",
            "torn-wrap",
            "paper-clip-across-the-coil",
            "meter-left-on-amps",
            "fuse-that-comes-back");

    private DemoScenarios() {}

    /** The names, which are those of the files without their ending. */
    public static List<String> names() {
        return NAMES;
    }

    /** The name of the file that holds a demo. */
    public static String fileName(String name) {
        return name + ENDING;
    }

    /** The bytes of the file that holds a demo in English. */
    public static byte[] bytes(String name) {
        return bytes(name, Locale.ENGLISH);
    }

    /**
     * The bytes of a file that holds a demo: the same circuit in every language.
     *
     * @param name one of {@link #names()}
     * @param locale whose language its words are in; English where there is no translation
     * @throws IllegalArgumentException if there is no such demo
     */
    public static byte[] bytes(String name, Locale locale) {
        try (InputStream file = DemoScenarios.class.getResourceAsStream(FOLDER + fileName(name))) {
            if (file == null) {
                throw new IllegalArgumentException("no demo is called " + name);
            }
            byte[] written = file.readAllBytes();
            return locale.getLanguage().equals(Languages.ENGLISH)
                    ? written
                    : DemoTexts.translated(name, written, locale);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
