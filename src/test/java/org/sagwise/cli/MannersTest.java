package org.sagwise.cli;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.sagwise.hazard.Signal;
import org.sagwise.text.Languages;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** The manners of a good command line (clig.dev): help that can be followed, guesses, and nothing lost. */
class MannersTest {

    /** Verbs that can end with 1: those that look for something. */
    private static final Set<String> FINDING =
            Set.of("sagwise", "sagwise check", "sagwise compare", "sagwise lesson lint");

    private static final String DEMO = "two-in-a-row";

    @TempDir
    private Path folder;

    private static Stream<CommandSpec> verbs() {
        return Languages.locales().stream().flatMap(locale -> all(SagwiseCommand.spec(locale)));
    }

    private static Stream<CommandSpec> all(CommandSpec spec) {
        return Stream.concat(
                Stream.of(spec),
                spec.subcommands().values().stream()
                        .map(CommandLine::getCommandSpec)
                        .flatMap(MannersTest::all));
    }

    /** Examples are real calls: their verbs and options exist. */
    @ParameterizedTest
    @MethodSource("verbs")
    void help_ofEveryVerb_hasExamplesThatExist(CommandSpec spec) {
        String[] examples = spec.usageMessage().footer();
        assertTrue(examples.length > 0, spec.qualifiedName());
        for (String example : examples) {
            assertTrue(example.strip().startsWith(spec.qualifiedName()), example);
            for (String word :
                    example.replaceAll("\"[^\"]*\"|[|>&].*", "").strip().split("\\s+")) {
                boolean isOption = word.startsWith("-") && !word.equals("-");
                CommandSpec own = spec.name().equals("sagwise") ? inner(spec, example) : spec;
                assertTrue(!isOption || own.optionsMap().containsKey(word), word + " in " + example);
            }
        }
    }

    /** picocli takes help for a format; a bare percent sign makes it complain on standard error. */
    @ParameterizedTest
    @MethodSource("verbs")
    void help_ofEveryVerb_isAFormatThatHolds(CommandSpec spec) {
        Stream.of(
                        Stream.of(spec.usageMessage().footer()),
                        Stream.of(spec.usageMessage().description()),
                        spec.args().stream().flatMap(arg -> Stream.of(arg.description())))
                .flatMap(lines -> lines)
                .forEach(line -> assertDoesNotThrow(() -> String.format(line), line));
    }

    private static CommandSpec inner(CommandSpec program, String example) {
        CommandLine verb = program.subcommands().get(example.strip().split(" ")[1]);
        return verb == null ? program : verb.getCommandSpec();
    }

    @ParameterizedTest
    @MethodSource("verbs")
    void help_ofEveryVerb_tellsStatusOneWhereItCanComeAlone(CommandSpec spec) {
        assertEquals(
                FINDING.contains(spec.qualifiedName()),
                spec.usageMessage().exitCodeList().containsKey("1"),
                spec.qualifiedName());
    }

    @Test
    void usage_followedLiterally_works() {
        List<String> lines = Cli.call("--help").out().lines().limit(2).toList();
        assertEquals(List.of("Usage: sagwise [FILE]", "       sagwise VERB [ARGUMENT...]"), lines);
        assertEquals(0, Cli.call(Cli.demo(DEMO)).status());
        assertEquals(0, Cli.call("readings", DEMO).status());
    }

    @Test
    void help_asAVerb_isTheHelpOfTheVerb() {
        assertEquals(Cli.call("--help").out(), Cli.call("help").out());
        assertEquals(
                Cli.call("lesson", "lint", "--help").out(),
                Cli.call("help", "lesson", "lint").out());
        assertTrue(Cli.call("help", "--man").out().contains(".TH \"SAGWISE\""));
        assertEquals(Cli.call("--version").out(), Cli.call("version").out());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "explain two-in-a-row --formt html | Did you mean --format?",
                "readings two-in-a-row --jsn | Did you mean --json?",
                "lesson lisst | Did you mean the verb \"list\"?",
                "help chek | Did you mean: check?",
                "explain two-in-a-row --format markdwn | Did you mean: markdown?",
                "picture two-in-a-row --theme drak -o x.png | Did you mean: dark?",
                "completion zhs | Did you mean: zsh?",
            })
    void slip_inAnyWord_isGuessed(String call, String words) {
        Cli.Outcome outcome = Cli.call(call.split(" "));
        assertEquals(2, outcome.status());
        assertTrue(outcome.err().contains(words), outcome.err());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "explain two-in-a-row -o x.md",
                "picture two-in-a-row -o x.svg",
                "run two-in-a-row --until 10s --csv x.csv",
                "share two-in-a-row --qr x.svg",
                "compare two-in-a-row thin-wire -o x.svg",
                "measured --rest 4.1 --cell 3.9 --coil 3.8 --ohm 0.5 -o x.json",
                "lesson handout 01 -o x.html",
            })
    void fileThatIsThere_isReplacedByForceAlone(String call) throws IOException {
        String name = call.substring(call.lastIndexOf(' ') + 1);
        Path file = Files.writeString(folder.resolve(name), "mine");
        String[] words = call.replace(" " + name, " " + file).split(" ");
        Cli.Outcome refused = Cli.call(words);
        assertEquals(2, refused.status(), refused.err());
        assertTrue(refused.err().contains("--force"), refused.err());
        assertEquals("mine", Files.readString(file));
        String[] forced = Stream.concat(Stream.of(words), Stream.of("--force")).toArray(String[]::new);
        assertTrue(Cli.call(forced).status() < 2);
        assertFalse(Files.readString(file).equals("mine"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"explain X -o X --format text", "run X --csv X", "run X --until 9s --csv X"})
    void scenarioThatIsRead_isNeverReplaced(String call) throws IOException {
        for (String ending : List.of("sagwise.json", "txt")) {
            Path file = folder.resolve("own." + ending);
            Files.copy(Path.of(Cli.demo(DEMO)), file);
            byte[] before = Files.readAllBytes(file);
            Cli.Outcome outcome = Cli.call((call.replace("X", file.toString()) + " --force").split(" "));
            assertEquals(2, outcome.status());
            assertEquals(new String(before), Files.readString(file));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "explain two-in-a-row -o x.docx, 'bbcode, htm, html, md, txt'",
        "run two-in-a-row --csv x.xlsx, csv",
        "picture two-in-a-row -o x.gif, 'png, svg, pdf'",
        "lesson handout 01 -o x.doc, 'html, pdf'",
    })
    void endingThatCannotBeWritten_isRefused(String call, String endings) {
        Cli.Outcome outcome = Cli.call(
                call.replace(" x.", " " + folder.resolve("x.").toString()).split(" "));
        assertEquals(2, outcome.status());
        assertTrue(outcome.err().contains(endings), outcome.err());
        assertEquals("", outcome.out());
    }

    @Test
    void dash_asOutput_isStandardOutput() {
        String readings = "measured --rest 4.1 --cell 3.9 --coil 3.8 --ohm 0.5 -o -";
        assertTrue(Cli.call(readings.split(" ")).out().startsWith("{"));
        assertTrue(Cli.call("picture", DEMO, "-o", "-").out().startsWith("<?xml"));
        assertEquals(
                Cli.call("explain", DEMO).out(),
                Cli.call("explain", DEMO, "-o", "-").out());
    }

    @Test
    void measured_asJson_holdsNoNoiseOfBinaryFractions() {
        String out = Cli.call("measured", "--rest=3.9", "--cell=3.8", "--coil=3.7", "--ohm=0.5", "--json")
                .out();
        assertTrue(out.contains("\"sag_V\": 0.1,"), out);
        assertFalse(out.matches("(?s).*[1-9][0-9.]{13,}.*"), out);
    }

    @Test
    void json_ofATitleThatSteersATerminal_isEscaped() {
        String title = "\u009b31m\u202eevil";
        String bench = "{\"sagwise\":1,\"title\":\"" + title + "\",\"parts\":[],\"links\":[]}";
        for (String verb : List.of("readings - --json", "check - --json")) {
            Cli.Outcome outcome = Cli.callWithInput(bench, verb.split(" "));
            assertFalse(outcome.out().contains("\u009b") || outcome.out().contains("\u202e"), outcome.out());
            assertTrue(outcome.json().toString().contains("\u202e"), "the same text after reading");
        }
        String shared = Cli.callWithInput(bench, "share", "-").out().strip();
        String opened = Cli.call("unshare", shared).out();
        assertTrue(opened.contains("\\u009b31m\\u202eevil"), opened);
    }

    @Test
    void ink_onATerminalAlone_unlessNobodyWantsIt() {
        assertEquals(Ink.COLOURED, Ink.of(null, "xterm", true));
        assertEquals(Ink.COLOURED, Ink.of("", "xterm", true), "an empty NO_COLOR counts as none");
        assertEquals(Ink.PLAIN, Ink.of("1", "xterm", true));
        assertEquals(Ink.PLAIN, Ink.of(null, "dumb", true));
        assertEquals(Ink.PLAIN, Ink.of(null, "xterm", false));
    }

    @Test
    void ink_ofEverySignal_isAnother() {
        Set<String> painted = Stream.of(Signal.values())
                .map(signal -> Ink.COLOURED.paint(signal, "WORD", "  WORD: title"))
                .collect(Collectors.toSet());
        assertEquals(Signal.values().length, painted.size());
        assertTrue(painted.stream().allMatch(line -> line.startsWith("  \u001b[") && line.endsWith(": title")));
        assertEquals("WORD", Ink.PLAIN.paint(Signal.DANGER, "WORD", "WORD"));
    }

    /** Where the shell is installed it reads its script without a complaint. */
    @ParameterizedTest
    @ValueSource(strings = {"bash", "zsh", "fish"})
    void completion_ofAShell_namesEveryVerbAndOptionAndIsRead(String shell) throws Exception {
        for (Locale locale : Languages.locales()) {
            String script = Cli.call("completion", shell, "--lang=" + locale).out();
            all(SagwiseCommand.spec(locale)).forEach(spec -> {
                assertTrue(script.contains(spec.name()), spec.qualifiedName());
                spec.optionsMap()
                        .keySet()
                        .forEach(option -> assertTrue(
                                script.contains(shell.equals("fish") ? option.replaceFirst("^-+", "") : option),
                                option));
            });
            Path file = Files.writeString(folder.resolve("script." + shell + locale), script);
            if (Stream.of("/bin/", "/usr/bin/").anyMatch(place -> Files.isExecutable(Path.of(place + shell)))) {
                Process check = new ProcessBuilder(shell, "-n", file.toString())
                        .redirectErrorStream(true)
                        .start();
                String said = new String(check.getInputStream().readAllBytes());
                assertTrue(check.waitFor(1, TimeUnit.MINUTES));
                assertEquals(0, check.exitValue(), said);
            }
        }
    }
}
