package org.sagwise.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sagwise.file.LessonReading;
import org.sagwise.reading.Bench;
import org.sagwise.scenario.Draft;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioRules;

/** What the moves of a lesson make of a bench: the same as an edit of the window. */
class MovesTest {

    private static final String SOUND = LessonFixture.resource("sound.yaml");
    private static final String MOVES = "    moves:\n      - join: [coil.2, A.-]\n";
    private static final String SOLUTION = "    solution:\n      - join: [coil.2, A.-]\n";

    /** The bench of the fixture, with probes and a note on its coil, which is wound and placed. */
    private static final String NOTED = LessonFixture.GAP
            .replace(
                    "\"ohm\": 1}",
                    "\"wire\": {\"alloy\": \"fecral-21-6-nb\", \"awg\": 26, \"wraps\": 6, \"inner_mm\": 3}}")
            .replace(
                    "\"links\":",
                    "\"probes\": {\"red\": \"coil.1\", \"black\": \"coil.2\"},"
                            + " \"notes\": [{\"on\": \"coil\", \"text\": \"warm\"}, {\"on\": \"A\", \"text\": \"full\"}],"
                            + " \"placement\": {\"A\": {\"x\": 1, \"y\": 2}, \"coil\": {\"x\": 5, \"y\": 6}},"
                            + " \"links\":");

    @Test
    void remove_partUnderProbe_takesProbesNotesAndPlaceAlong() {
        Scenario after = moved(NOTED, "{remove: coil}");

        assertEquals(Optional.empty(), after.probes());
        assertEquals(List.of("A"), after.notes().stream().map(note -> note.on()).toList());
        assertEquals(List.of("A"), List.copyOf(after.placement().keySet()));
        assertSound(after);
    }

    @Test
    void set_ohmOfWoundCoil_takesTheWireAway() {
        Scenario after = moved(NOTED, "{set: coil, ohm: 0.5}");

        assertFalse(after.part("coil").orElseThrow().keys().has("wire"));
        assertSound(after);
        assertEquals(
                0.5,
                Bench.of(after, LessonFixture.CATALOGUE).coils().get("coil").ohm20(),
                1e-12);
    }

    @Test
    void turn_cellUnderProbe_turnsItsPictureAndBringsTheProbeToTheOtherEnd() {
        Scenario after = moved(NOTED.replace("\"red\": \"coil.1\"", "\"red\": \"A.+\""), "{turn: A}");

        assertEquals("A.-", after.probes().orElseThrow().red().toString());
        assertEquals(180, after.placement().get("A").turnDegrees());
    }

    @Test
    void join_pairThatIsJoined_getsTheNewJoint() {
        Scenario after = moved(LessonFixture.GAP, "{join: [fire.1, A.+], contact_mohm: 5}");

        assertEquals(2, after.links().size());
        assertEquals(5, after.links().get(0).keys().number("contact_mohm", 0));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{set: coil, ohm: -1}|ohm",
                "{set: coil, ohm: 1_000}|ohm",
                "{set: A, limit_A: \"x\"}|limit_A",
                "join: [coil.2, A.zz]|has no terminal “zz”",
                "join: [coil.2, spool.1]|no part “spool”",
                "probes: [A.+, A.zz]|has no terminal “zz”",
                "{join: [coil.2, A.-], contact_mohm: -1e9}|contact_mohm",
                "{mend: lead, contact_mohm: 3}|no joint named “lead”",
                "cut: [coil.2, A.+]|nothing to cut",
                "swap: [A, Z]|no part “Z”",
                "turn: Z|no part “Z”",
                "free: Z|no part “Z”",
                "remove: Z|no part “Z”",
                "{add: A, kind: resistor}|“A”",
                "{add: R, kind: resistor, ohm: 1, volts: 3}|volts"
            })
    void move_thatTheEditRefuses_isToldInBenchesAndSolutionsAndLeftOut(String move, String told) {
        String derived = String.join(
                "\n",
                LessonFixture.texts(LessonFixture.read(SOUND.replace(MOVES, "    moves:\n      - " + move + "\n"))
                        .faults()));
        assertTrue(derived.contains(told), derived);

        LessonReading reading = LessonFixture.read(SOUND.replace(SOLUTION, "    solution:\n      - " + move + "\n"));
        Lesson lesson = reading.lesson().orElseThrow();
        List<String> found = LessonLint.check(lesson, LessonFixture.CATALOGUE).stream()
                .filter(it -> it.place().equals("steps[1].solution[0]"))
                .map(it -> it.sentence(Locale.ENGLISH))
                .toList();
        assertEquals(1, found.size());
        assertTrue(found.get(0).contains(told), found.get(0));
        LessonPlayer shown = LessonPlayer.begin(lesson, LessonFixture.CATALOGUE, Locale.ENGLISH)
                .jump(1)
                .showSolution();
        assertSound(shown.bench());
    }

    private static Scenario moved(String bench, String move) {
        LessonReading reading = LessonFixture.read(SOUND.replace(MOVES, "    moves:\n      - " + move + "\n"), bench);
        Lesson lesson = reading.lesson().orElseThrow(() -> new AssertionError(LessonFixture.texts(reading.faults())));
        return lesson.scenarios(Locale.ENGLISH).get("closed");
    }

    private static void assertSound(Scenario scenario) {
        assertEquals(List.of(), new ScenarioRules(LessonFixture.CATALOGUE).check(Draft.of(scenario)));
    }
}
