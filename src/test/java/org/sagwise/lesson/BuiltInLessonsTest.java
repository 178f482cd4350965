package org.sagwise.lesson;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.file.LessonLibrary;
import org.sagwise.scenario.ScenarioRules;

/** The lessons that come with the program: sound, complete, and playable to their end. */
class BuiltInLessonsTest {

    private static final Path FOLDER = Path.of("lessons");
    private static final Path SCHEMA = Path.of("assets/lesson-1.schema.json");

    static List<String> ids() {
        return LessonLibrary.ids();
    }

    static List<Lesson> lessons() {
        return ids().stream().map(LessonFixture::builtIn).toList();
    }

    @ParameterizedTest
    @MethodSource("ids")
    void check_ofLesson_findsNothing(String id) {
        Lesson lesson = LessonFixture.builtIn(id);

        assertEquals(List.of(), LessonLint.check(lesson, LessonFixture.CATALOGUE));
    }

    @ParameterizedTest
    @MethodSource("ids")
    void file_byItsSchema_isSound(String id) throws IOException {
        var schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(SCHEMA));
        var file = new YAMLMapper()
                .readTree(FOLDER.resolve(id).resolve("lesson.yaml").toFile());

        assertEquals(List.of(), schema.validate(file.toString(), InputFormat.JSON));
    }

    @Test
    void ids_theFolder_holdsExactlyThese() throws IOException {
        assertEquals(new TreeSet<>(ids()), names(FOLDER));
        for (String id : ids()) {
            for (String file : names(FOLDER.resolve(id))) {
                assertArrayEquals(
                        Files.readAllBytes(FOLDER.resolve(id).resolve(file)),
                        LessonLibrary.source(id).file(file).orElseThrow(),
                        id + "/" + file);
            }
        }
    }

    @Test
    void needs_ofEveryLesson_comeBeforeIt() {
        Set<String> before = new HashSet<>();
        int evening = 1;
        for (Lesson lesson : lessons()) {
            assertTrue(before.containsAll(lesson.needs()), lesson.id());
            assertTrue(lesson.evening() >= evening, lesson.id());
            evening = lesson.evening();
            before.add(lesson.id());
        }
    }

    @Test
    void ideas_ofAllWrongAnswers_areAllThereAre() {
        Set<Idea> open = EnumSet.allOf(Idea.class);
        open.removeAll(LessonSet.ideas(lessons()));

        assertEquals(Set.of(), open);
    }

    @Test
    void evenings_ofTheCourse_takeAtMostNinetyMinutes() {
        for (int evening = 1; evening <= 7; evening++) {
            int which = evening;
            int minutes = lessons().stream()
                    .filter(it -> it.evening() == which)
                    .mapToInt(Lesson::minutes)
                    .sum();
            assertTrue(minutes > 0 && minutes <= 90, "evening " + evening + ": " + minutes);
        }
    }

    /** What nobody may skip fits into 45 minutes, and something is left of it. */
    @Test
    void evenings_withoutWhatMayBeSkipped_fitIntoThreeQuartersOfAnHour() {
        assertEquals(Map.of(), Pacing.tooLong(lessons()));
        for (int evening = 1; evening <= 7; evening++) {
            int which = evening;
            double core = lessons().stream()
                    .filter(it -> it.evening() == which)
                    .mapToDouble(it -> Pacing.minutes(it, true))
                    .sum();
            assertTrue(core >= 30, "evening " + evening + ": " + core);
        }
    }

    static Stream<Object[]> idsInBothLanguages() {
        return ids().stream()
                .flatMap(id -> Stream.of(Locale.ENGLISH, Locale.GERMAN).map(locale -> new Object[] {id, locale}));
    }

    @ParameterizedTest
    @MethodSource("idsInBothLanguages")
    void lesson_playedAsMeant_comesToItsEndWithNothingOpen(String id, Locale locale) {
        Lesson lesson = LessonFixture.builtIn(id);
        LessonPlayer player = LessonPlayer.begin(lesson, LessonFixture.CATALOGUE, locale);

        while (!player.isLast()) {
            assertReadable(player, locale);
            LessonPlayer done = Pupil.solve(player);
            assertTrue(done.mayGoOn(), id + " " + player.step().id());
            LessonPlayer next = done.next();
            assertEquals(player.at() + 1, next.at(), id + " " + player.step().id());
            player = next;
        }
        player = Pupil.solve(player);

        assertTrue(player.mayGoOn());
        assertTrue(player.summary().stream().allMatch(Verdict::met), id);
    }

    private static void assertReadable(LessonPlayer player, Locale locale) {
        for (StepTexts.Said said : StepTexts.of(player.step())) {
            if (said.time() == StepTexts.Time.AT_STEP) {
                assertReadable(player.say(said.text()), player);
            }
        }
        for (Verdict verdict : player.verdicts()) {
            assertReadable(verdict.question() + verdict.right() + verdict.reply(), player);
            if (locale.equals(Locale.GERMAN)) {
                assertFalse(verdict.reply().matches(".*\\d\\.\\d.*"), verdict.reply());
            }
        }
    }

    private static void assertReadable(String text, LessonPlayer player) {
        assertFalse(
                text.contains("{") || text.contains("—") || text.contains("NaN"),
                player.lesson().id() + " " + player.step().id() + ": " + text);
    }

    /** Values of the course, worked out by hand from Ohm's law and the kit's own numbers. */
    @ParameterizedTest
    @CsvSource({
        "06-same-watts, side/coil.power_W, 17.64",
        "06-same-watts, row/coil.power_W, 17.64",
        "06-same-watts, row/A.current_A, 2.10",
        "05-end-to-end, small-row/small.power_W, 70.56",
        "08-the-cell-sags, start/A.terminal_V, 4.0385",
        "08-the-cell-sags, tired/B.terminal_V, 3.75",
        "09-where-the-volts-went, start/lead.drop_V, 0.2291",
        "09-where-the-volts-went, side/coil.power_W, 30.25",
        "09-where-the-volts-went, row/coil.power_W, 32.93",
        "10-each-cell-is-asked, row-old-coil/A.current_A, 28.966",
        "11-burst-or-steady, rewrapped/A.current_A, 7.1186",
        "12-unequal-partners, mixed/B.current_A, -3.5294",
        "12-unequal-partners, flat/rest/B.current_A, -22.5",
        "13-smallest-empties-first, later/B.terminal_V, -0.06176",
        "14-wrong-way-round, three/coil.current_A, 1.03448",
        "14-wrong-way-round, side/rest/A.current_A, 210",
        "15-shorts-and-guards, torn/rest/A.current_A, 60",
        "16-explain-a-mistake, start/lead.heat_W, 12.656",
        "16-explain-a-mistake, lower-coil/lead.heat_W, 26.09",
        "17-the-meter-joins-in, start/coil.current_A, 19.178"
    })
    void reading_ofTheCourse_isTheOneWorkedOutByHand(String id, String ref, double expected) {
        Lesson lesson = LessonFixture.builtIn(id);
        var named = lesson.scenarios(Locale.ENGLISH);
        Situation situation = Situation.of(named.get(lesson.first()), named, LessonFixture.CATALOGUE);

        double value = situation.read(ReadingRef.parse(ref).orElseThrow()).orElseThrow();

        assertEquals(expected, value, Math.abs(expected) * 5e-4);
    }

    /**
     * What a meter does to a circuit, as in OpenStax, University Physics Volume 2, section 10.4:
     * 4.2 V, 16 mΩ in the cell, 3 mΩ in the button, 0.2 Ω in the coil; 10 MΩ in the voltmeter and
     * 10 mΩ in the ammeter.
     */
    @ParameterizedTest
    @CsvSource({
        "put-voltmeter, volts.current_A, 3.8356e-7", // 4.2 · 0.2 / 0.219 / 1e7
        "put-voltmeter, coil.current_A, 19.178", // 4.2 / 0.219
        "put-ammeter, amps.current_A, 18.341", // 4.2 / 0.229
        "make-short, rest/A.current_A, 161.54" // 4.2 / 0.026
    })
    void reading_withAMeterJoinedIn_isTheOneWorkedOutByHand(String step, String ref, double expected) {
        Lesson lesson = LessonFixture.builtIn("17-the-meter-joins-in");
        var named = lesson.scenarios(Locale.ENGLISH);
        List<String> steps = lesson.steps().stream().map(it -> it.head().id()).toList();
        Situation built = Situation.of(
                Track.of(lesson, named, new ScenarioRules(LessonFixture.CATALOGUE))
                        .after()
                        .get(steps.indexOf(step)),
                named,
                LessonFixture.CATALOGUE);

        double value = built.read(ReadingRef.parse(ref).orElseThrow()).orElseThrow();

        assertEquals(expected, value, Math.abs(expected) * 5e-4);
    }

    private static Set<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return new TreeSet<>(
                    files.map(file -> file.getFileName().toString()).toList());
        }
    }
}
