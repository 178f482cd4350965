package org.sagwise.ui.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sagwise.hazard.Caution;
import org.sagwise.lesson.Sureness;
import org.sagwise.lesson.Tally;
import org.sagwise.part.MeterMode;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.KeySpec;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.plan.CheckStep;
import org.sagwise.plan.NextStep;
import org.sagwise.reading.Ledger;
import org.sagwise.reading.PartReading;
import org.sagwise.report.picture.PictureFormat;
import org.sagwise.report.post.PostFormat;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.ScenarioKeys;
import org.sagwise.scenario.edit.JointChoice;
import org.sagwise.ui.kit.MenuTable;

/** Holds the window's code and its bundle together: no key is missing, none is left over. */
class UiTextsTest {

    private static final Path TEXTS = Path.of("src/main/resources/org/sagwise/texts");
    private static final Path CODE = Path.of("src/main/java/org/sagwise/ui");
    private static final Pattern LITERAL = Pattern.compile("\"([a-z][a-z0-9._-]*)\"");
    private static final Pattern COMMAND =
            Pattern.compile("(?:Command\\.of|\\bchange|\\balign)\\(\\s*\"([a-z-]+)\"", Pattern.MULTILINE);
    private static final Pattern MENU = Pattern.compile("\\.menu\\(\\s*\"([a-z-]+)\"");
    private static final Pattern LONE_APOSTROPHE = Pattern.compile("(?<!')'(?!')");

    private static String word(Enum<?> each) {
        return each.name().toLowerCase(Locale.ROOT);
    }

    /** Keys that are put together at run time, each with the values it is put together of. */
    private static Set<String> composed() {
        Set<String> keys = new TreeSet<>();
        Stream.of(PartKind.values()).forEach(kind -> keys.add("kind." + kind.word()));
        Stream.of(PartReading.State.values()).forEach(state -> keys.add("state." + word(state)));
        keys.add("state.closed");
        Stream.of(Caution.When.values()).forEach(when -> keys.add("when." + word(when)));
        for (Ledger.Entry entry : Ledger.Entry.values()) {
            keys.add("ledger.row." + word(entry));
            keys.add("ledger.row." + word(entry) + ".tip");
        }
        Stream.of("name", "kind", "volts", "amps", "watts", "remark").forEach(column -> keys.add("table." + column));
        Stream.of("space", "tab", "arrows", "enter", "escape", "pan", "menu", "choose")
                .forEach(move -> keys.addAll(Set.of("keys." + move, "keys." + move + ".does")));
        Stream.of(
                        "turn", "flip", "move", "nudge", "join", "gather", "joint", "probe", "dial", "write", "note",
                        "delete")
                .forEach(move -> keys.addAll(Set.of("keys." + move, "keys." + move + ".does")));
        Stream.of("doors.learn", "doors.build", "doors.explain")
                .forEach(key -> keys.addAll(Set.of(key, key + ".text")));
        Stream.of(JointChoice.values())
                .map(choice -> "hand.join." + word(choice))
                .forEach(key -> keys.addAll(Set.of(key, key + ".tip")));
        for (PartKind kind : PartKind.values()) {
            kind.keys().forEach(spec -> addKey(keys, spec));
        }
        keys.add("key.label");
        ScenarioKeys.JUMPER.keys().stream()
                .filter(spec -> !spec.name().equals("material"))
                .forEach(spec -> addKey(keys, spec));
        keys.add("key.contact_mohm");
        Stream.of("left.shelf", "left.card", "left.examples", "left.lessons", "left.lesson", "left.author")
                .forEach(key -> keys.addAll(Set.of(key, key + ".tip")));
        Stream.of(PartKind.values()).forEach(kind -> keys.add("family." + kind.word()));
        Stream.of("supply", "resistor", "meter")
                .map(word -> "shelf.plain." + word)
                .forEach(key -> keys.addAll(Set.of(key, key + ".about")));
        Stream.of(
                        "note.delete",
                        "note.leave",
                        "note.keep",
                        "qr.copy",
                        "qr.save",
                        "inside.look",
                        "wind.open",
                        "vary.open")
                .forEach(key -> keys.addAll(Set.of(key, key + ".tip")));
        Stream.of("align-row", "align-column", "meter-volts", "meter-amps", "meter-ohms")
                .forEach(id -> addCommand(keys, id));
        for (String colour : List.of("red", "black")) {
            keys.addAll(Set.of(
                    "hand.probe." + colour,
                    "meter.probe." + colour,
                    "status.probe." + colour,
                    "status.probe." + colour + ".over"));
        }
        Stream.of(CheckStep.values()).forEach(step -> keys.add("written." + word(step)));
        Stream.of(MeterMode.values()).forEach(mode -> keys.add("meter.mode." + mode.word()));
        Stream.of("say", "predict", "estimate", "do", "measure", "explain", "write", "caution", "check")
                .forEach(kind -> keys.add("lesson.kind." + kind));
        Stream.of(Sureness.values()).forEach(each -> keys.add("lesson.how-sure." + each.word()));
        Stream.of("rest", "cell", "coil", "ohm", "limit", "capacity").forEach(each -> keys.add("measured." + each));
        Stream.of("mistyped", "other_version", "twice", "unknown_lesson").forEach(it -> keys.add("check.codes." + it));
        Stream.of("corrected", "file", "copied", "this").forEach(each -> keys.add("compare.with." + each));
        Stream.of(PostFormat.values()).forEach(each -> keys.add("post.format." + each.word()));
        Stream.of(PictureFormat.values()).forEach(e -> keys.add("picture.format." + word(e)));
        Stream.of(Press.values()).forEach(each -> keys.add("picture.press." + word(each)));
        Stream.of(Drawing.values()).forEach(each -> keys.add("picture.drawing." + word(each)));
        Stream.of("light", "dark", "high-contrast").forEach(each -> keys.add("picture.colours." + each));
        Stream.of("format", "press", "drawing", "colours").forEach(each -> keys.add("picture." + each));
        Stream.of(NextStep.values())
                .filter(step -> step != NextStep.NONE)
                .forEach(step -> keys.add("next." + word(step)));
        Stream.of("none", "unfinished", "unjudged").forEach(each -> keys.add("cautions." + each + ".scope"));
        Stream.of(Tally.Advice.values()).forEach(it -> keys.add("instructor.advice." + word(it)));
        return keys;
    }

    /** The name of a key on a card, and its words where they are not shown as written. */
    private static void addKey(Set<String> keys, KeySpec spec) {
        if (spec.type() instanceof KeySpec.ForeignType) {
            return;
        }
        keys.add("key." + spec.name());
        if (spec.type() instanceof KeySpec.ChoiceType choice
                && !Set.of("chemistry", "format").contains(spec.name())) {
            choice.choices().forEach(word -> keys.add("word." + word));
        } else if (spec.type() instanceof KeySpec.GroupType group) {
            group.keys().forEach(inner -> addKey(keys, inner));
        }
    }

    private static void addCommand(Set<String> keys, String id) {
        keys.add("command." + id);
        keys.add("command." + id + ".tip");
    }

    private static Set<String> asked() throws IOException {
        String code = code();
        Set<String> keys = composed();
        found(COMMAND, code).filter(id -> !id.endsWith("-")).forEach(id -> addCommand(keys, id));
        found(MENU, code).forEach(id -> keys.add("menu." + id));
        MenuTable.menus().forEach(id -> keys.add("menu." + id));
        MenuTable.commands().forEach(id -> addCommand(keys, id));
        return keys;
    }

    private static String code() throws IOException {
        StringBuilder code = new StringBuilder();
        try (Stream<Path> files = Files.walk(CODE)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
                code.append(Files.readString(file));
            }
        }
        return code.toString();
    }

    private static Stream<String> found(Pattern pattern, String code) {
        return pattern.matcher(code).results().map((MatchResult match) -> match.group(1));
    }

    private static Properties bundle(String name) throws IOException {
        Properties properties = new Properties();
        try (Reader reader = new InputStreamReader(Files.newInputStream(TEXTS.resolve(name)), StandardCharsets.UTF_8)) {
            properties.load(reader);
        }
        return properties;
    }

    @Test
    void bundle_everyKeyThatTheCodePutsTogether_isThere() throws IOException {
        Set<String> missing = new TreeSet<>(asked());
        missing.removeAll(bundle("ui.properties").stringPropertyNames());
        missing.removeAll(bundle("kinds.properties").stringPropertyNames());

        assertEquals(Set.of(), missing);
    }

    /** Whole, or up to a dot or hyphen behind which the rest is put: else the list of them has one that is no longer. */
    @Test
    void composed_everyKey_beginsAsTheCodeHasIt() throws IOException {
        Set<String> literals = Pattern.compile("\"([a-z][A-Za-z0-9._-]*)\"")
                .matcher(code())
                .results()
                .map(match -> match.group(1))
                .collect(Collectors.toSet());
        Set<String> stale = composed().stream()
                .filter(key -> !literals.contains(key))
                .filter(key -> literals.stream()
                        .noneMatch(it -> key.startsWith(it.matches(".*[.-]") ? it : it + ".") && it.contains(".")))
                .collect(Collectors.toCollection(TreeSet::new));

        assertEquals(Set.of(), stale);
    }

    @Test
    void bundle_everyKey_isUsed() throws IOException {
        Set<String> unused = new TreeSet<>(bundle("ui.properties").stringPropertyNames());
        unused.removeAll(asked());
        unused.removeAll(found(LITERAL, code()).collect(Collectors.toSet()));

        assertEquals(Set.of(), unused);
    }

    @Test
    void kinds_everyKeyOfACardOrTheLedger_isUsed() throws IOException {
        Set<String> unused = new TreeSet<>(bundle("kinds.properties").stringPropertyNames());
        unused.removeIf(key -> !key.matches("(key|word|ledger\\.row)\\..*"));
        unused.removeAll(asked());

        assertEquals(Set.of(), unused);
    }

    @Test
    void code_everyLiteralThatLooksLikeAKey_isInTheBundle() throws IOException {
        Pattern said = Pattern.compile("(?:(?<!locale\\))\\.say|[^.a-z]say|[^.]text)\\(\\s*\"([a-z][a-z0-9._-]*)\"");
        Set<String> missing = found(said, code()).collect(Collectors.toCollection(TreeSet::new));
        missing.removeIf(key -> key.endsWith("."));
        missing.removeAll(bundle("ui.properties").stringPropertyNames());
        missing.removeAll(bundle("drawer.properties").stringPropertyNames());
        missing.removeAll(bundle("ideas-check.properties").stringPropertyNames());
        missing.removeAll(bundle("kinds.properties").stringPropertyNames());

        assertEquals(Set.of(), missing);
    }

    @ParameterizedTest
    @ValueSource(strings = {"ui.properties", "ui_de.properties", "kinds.properties", "kinds_de.properties"})
    void bundle_everySentence_isThereAndDoublesItsApostrophes(String name) throws IOException {
        Properties texts = bundle(name);
        for (String key : texts.stringPropertyNames()) {
            String text = texts.getProperty(key);
            assertTrue(!text.isBlank(), key);
            assertTrue(!LONE_APOSTROPHE.matcher(text).find(), key + ": " + text);
        }
    }

    /** Nothing here may promise that a circuit is harmless. */
    @ParameterizedTest
    @ValueSource(strings = {"ui.properties", "ui_de.properties", "kinds.properties", "kinds_de.properties"})
    void bundle_everySentence_promisesNoSafety(String name) throws IOException {
        Pattern promise = Pattern.compile("\\b(safe|safely|ungefährlich|gefahrlos)\\b");
        bundle(name)
                .forEach((key, text) ->
                        assertTrue(!promise.matcher(text.toString()).find(), key.toString()));
    }
}
