package org.sagwise.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The command line takes a third language by its texts alone, and has no sentence of its own. */
class MadeUpLanguageTest {

    @TempDir
    private static Path folder;

    private static Method run;
    private static Object noWindow;

    private static final Pattern WORD = Pattern.compile("\\p{L}{3,}");

    /** A share text, in one line or several. */
    private static final Pattern SHARED = Pattern.compile("sagwise1:\\s*[\\w\\s-]+\\.[0-9a-f\\s]{8,}");

    /** Names of demos, of parts in the catalogue and of their files. */
    private static final Pattern IDS = Pattern.compile("[\\w.]+(-[\\w.]+)+");

    private static final Pattern UNSEEN =
            Pattern.compile("<(style|script|head|metadata)\\b.*?</\\1>|data:[\\w/]+;base64,[\\w+/=]+", Pattern.DOTALL);

    /** What a browser says of a picture. */
    private static final Pattern SPOKEN = Pattern.compile("(?:alt|title|aria-label)=\"([^\"]*)\"");

    private static final Pattern MARKUP = Pattern.compile("<[^>]*>", Pattern.DOTALL);

    private static final Set<String> UNITS =
            Set.of("min", "mAh", "mWh", "kWh", "ohm", "mohm", "INR", "ICR", "IMR", "NCR", "IFR");

    @BeforeAll
    static void load() throws IOException, ReflectiveOperationException {
        ClassLoader program = MadeUpLanguage.program(folder);
        Class<?> opener = program.loadClass("org.sagwise.cli.WindowOpener");
        run = program.loadClass("org.sagwise.cli.SagwiseCommand")
                .getMethod("run", String[].class, opener, PrintWriter.class, PrintWriter.class, InputStream.class);
        noWindow =
                program.loadClass("org.sagwise.cli.NoWindow").getConstructor().newInstance();
    }

    private static String call(String... words) throws ReflectiveOperationException {
        String[] all = Stream.concat(Stream.of(words), Stream.of("--lang", MadeUpLanguage.CODE))
                .toArray(String[]::new);
        StringWriter out = new StringWriter();
        run.invoke(null, all, noWindow, new PrintWriter(out), new PrintWriter(out), InputStream.nullInputStream());
        return out.toString();
    }

    static Stream<List<String>> calls() {
        Stream<List<String>> others = Stream.of(
                List.of("parts"),
                List.of("parts", "inr18650-2500-20A"),
                List.of("lesson", "list"),
                List.of("lesson", "lint", "01"),
                List.of("lesson", "handout", "01", "--key"),
                List.of("measured", "--rest", "4.14", "--cell", "3.80", "--coil", "3.38", "--ohm", "0.30"),
                List.of("compare", "two-in-a-row", "two-cells-side-by-side"),
                List.of("check", "--of", "2p 2500 mAh; coil 0.5 ohn; D reversed"));
        Stream<List<String>> demos = Stream.of(
                        "bench-check",
                        "side-by-side-one-reversed",
                        "regulated-board",
                        "paper-clip-across-the-coil",
                        "re-wrapped-cell",
                        "protected-pair-asked-too-much")
                .flatMap(demo -> Stream.of(
                        List.of("readings", demo),
                        List.of("check", demo),
                        List.of("run", demo),
                        List.of("explain", demo, "--format", "text"),
                        List.of("explain", demo, "--format", "html")));
        return Stream.concat(others, demos);
    }

    @ParameterizedTest
    @MethodSource("calls")
    void call_inAMadeUpLanguage_hasNoWordsOutsideOfBrackets(List<String> words)
            throws IOException, ReflectiveOperationException {
        String said = call(words.toArray(String[]::new));

        assertTrue(said.contains("[["), said);
        assertEquals(Set.of(), words(said), said);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "--schematic"})
    void picture_inAMadeUpLanguage_hasNoWordsOutsideOfBrackets(String kind)
            throws IOException, ReflectiveOperationException {
        Path file = folder.resolve("picture.svg");
        call(Stream.of("picture", "bench-check", "-o", file.toString(), kind)
                .filter(word -> !word.isEmpty())
                .toArray(String[]::new));
        String picture = Files.readString(file);

        assertTrue(picture.contains("[["), picture);
        assertEquals(Set.of(), words(picture), picture);
    }

    /** Words for people that stand outside of brackets; units, ids and markup are none. */
    private static Set<String> words(String said) throws IOException {
        String seen = MARKUP.matcher(
                        SPOKEN.matcher(UNSEEN.matcher(said).replaceAll(" ")).replaceAll("> $1 <"))
                .replaceAll(" ");
        String words = IDS.matcher(SHARED.matcher(MadeUpLanguage.outside(seen)).replaceAll(" "))
                .replaceAll(" ");
        Set<String> found = new TreeSet<>();
        Matcher word = WORD.matcher(words);
        while (word.find()) {
            found.add(word.group());
        }
        found.removeAll(UNITS);
        found.removeAll(MadeUpLanguage.ids());
        return found;
    }

    @Test
    void outside_aSentenceThatIsInNoBundle_isFound() {
        assertEquals("A    stays, 3 V", MadeUpLanguage.outside("A [[goes [[quite]] away]] stays, 3 V"));
    }
}
