package org.sagwise.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.sagwise.file.LessonReading;
import org.sagwise.scenario.Fault;
import org.sagwise.scenario.Finding;

/** One defect at a time in a lesson that is sound without it. */
class LessonLintTest {

    private static final String SOUND = LessonFixture.resource("sound.yaml");

    @Test
    void check_soundLesson_findsNothing() {
        assertEquals(List.of(), lint(SOUND));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "is: 4.2}|is: 4.3}|NOT_SOLVED",
                "is: 4.2}|is: 0}|DONE_AT_START",
                "    is: 4.2\\n|    is: 4.9\\n|UNEXPECTED_READING",
                "reading: coil.current_A|reading: coil.speed_A|READING_EMPTY",
                "reading: coil.current_A|reading: spool.current_A|READING_EMPTY",
                "No: {coil.current_A}|No: {coil.curent_A}|READING_MISSPELT",
                "No: {coil.current_A}|No: {closed/A.charm_A}|READING_EMPTY",
                "No: {coil.current_A}|No: {closed}|BAD_READING",
                "No: {coil.current_A}|No: 4.2 A|BARE_NUMBER",
                "en: \"4.20 A\"|en: \"4.2 A\"|OPTION_DIGITS",
                "en: \"4.20 A\"|en: \"4.20 A, as always\"|OPTION_REASON",
                "en: \"4.20 A\"|en: \"42.0 A\"|EQUAL_OPTIONS",
                "en: \"Nothing\"|en: \"Nothing at all in the whole ring\"|OPTION_LENGTH",
                "No, that is far too much.|No.|THIN_REPLY",
                "en: \"Closes a gap.\"|en: \"Finds the same amps.\"|TELLING_HEAD",
                "minutes: 15|minutes: 40|MINUTES",
                "    is: 17.64\\n|    is: 17.64\\n    within: 60%\\n|WIDE_TOLERANCE",
                "    kind: estimate\\n    bench: other\\n|    kind: estimate\\n|SEEN_BEFORE",
                "  - id: hot\\n|  - id: again\\n    kind: estimate\\n    bench: start\\n    text: {en: \"What?\", de: \"Was?\"}\\n"
                        + "    reading: coil.power_W\\n    reply: {en: \"It is.\", de: \"Es ist.\"}\\n  - id: hot\\n|NOTHING_SHOWS_IT",
                "quantity: current_A, is: 4.2}|quantity: current_A, is: 4.2, within: 0.1%}|JOINT_MATTERS",
                "Read the amps.|Press *Let time runn*, then read the amps.|NO_SUCH_CONTROL",
                "Lies die Ampere ab.|Drücke *Festhaltn* und lies sie ab.|NO_SUCH_CONTROL",
                "Nein: {coil.current_A}|Nein: {coil.power_W}|DIFFERENT_BLANKS",
                "Close it.|Close it, then it is safe.|FORBIDDEN_WORD",
                "    solution:\\n"
                        + "      - join: [coil.2, A.-]|    solution:\\n"
                        + "      - join: [spool.2, A.-]|MOVE_REFUSED",
                "    solution:\\n"
                        + "      - join: [coil.2, A.-]|    solution:\\n"
                        + "      - join: [coil.9, A.-]|MOVE_REFUSED",
                "    solution:\\n"
                        + "      - join: [coil.2, A.-]|    solution:\\n"
                        + "      - {mend: lead, contact_mohm: 3}|MOVE_REFUSED",
                "    solution:\\n"
                        + "      - join: [coil.2, A.-]|    solution:\\n"
                        + "      - {set: coil, ohm: -1}|MOVE_REFUSED",
                "    solution:\\n"
                        + "      - join: [coil.2, A.-]|    solution:\\n"
                        + "      - cut: [coil.2, A.+]|MOVE_REFUSED",
                "      - {part: coil, quantity: current_A, is: 4.2}|      - joined: [coil.2," + " fire.2]|NOT_MET",
                "      - {part: coil, quantity: current_A, is: 4.2}|      - apart: [coil.3," + " A.-]|BAD_TERMINAL",
                "      - {part: coil, quantity: current_A, is: 4.2}|      - probes: [spool.1," + " A.-]|BAD_TERMINAL",
                "      - {part: coil, quantity: current_A, is: 4.2}|      - caution:" + " meteor|UNKNOWN_CAUTION",
                "    kind: do|    look: [spool]\\n    kind: do|UNKNOWN_PART",
                "    kind: do|    bench: nowhere\\n    kind: do|UNKNOWN_BENCH",
                "    kind: do|    beside: nowhere\\n    kind: do|UNKNOWN_BENCH",
                "de: \"Taster\"}\\n  coil:|de: \"Taster\"}\\n  spool:|UNNAMED_PART"
            })
    void check_lessonWithOneDefect_namesIt(String right, String wrong, LessonProblem expected) {
        String from = right.replace("\\n", "\n");
        String to = wrong == null ? "" : wrong.replace("\\n", "\n");
        assertTrue(SOUND.contains(from), "nothing to spoil");

        List<Fault> found = lint(SOUND.replaceFirst(quote(from), quoteTo(to)));

        assertTrue(found.contains(expected), () -> expected + " not in " + found);
    }

    /** Who teaches in one language leaves out the other everywhere; here and there it is still missing. */
    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void check_lessonInOneLanguage_isSoundAndSaysWhich(String only) {
        String other = only.equals("en") ? "de" : "en";
        String yaml = SOUND.replaceAll(
                "\\{en: (\"[^\"]*\"), de: (\"[^\"]*\")\\}",
                "{" + only + ": " + (only.equals("en") ? "$1" : "$2") + "}");
        LessonReading reading = LessonFixture.read(yaml);

        assertEquals(List.of(), LessonFixture.texts(reading.faults()));
        assertEquals(List.of(), lint(yaml));
        assertEquals(Set.of(only), reading.lesson().orElseThrow().languages());
        assertEquals(
                List.of(LessonProblem.MISSING_LANGUAGE),
                LessonFixture.read(yaml.replaceFirst(
                                "\\{" + only + ": \"Gap\"|\\{" + only + ": \"Lücke\"", "$0, " + other + ": \"X\""))
                        .faults()
                        .stream()
                        .map(Finding::problem)
                        .distinct()
                        .toList());
    }

    @Test
    void read_misspeltIdea_guessesWhatWasMeant() {
        String yaml = SOUND.replace("idea: one-wire-is-enough", "idea: one-wire-is-enuf");

        String told =
                String.join("\n", LessonFixture.texts(LessonFixture.read(yaml).faults()));

        assertTrue(told.contains("Is one-wire-is-enough meant?"), told);
    }

    /** Who has the reason in every answer is not asked for it again. */
    @Test
    void check_whyWhereAnswersHaveReasons_isFound() {
        String asked = SOUND.replace("    kind: predict\n", "    kind: predict\n    also: [why]\n");
        String given = asked.replace("\"Nothing\"", "\"Nothing: a gap\"")
                .replace("\"Nichts\"", "\"Nichts: eine Lücke\"")
                .replace("\"4.20 A\"", "\"4.20 A: one wire\"")
                .replace("\"4,20 A\"", "\"4,20 A: ein Draht\"")
                .replace("\"42.0 A\"", "\"42.0 A: much\"")
                .replace("\"42,0 A\"", "\"42,0 A: viel\"");

        assertEquals(List.of(), lint(asked));
        assertTrue(lint(given).contains(LessonProblem.WHY_GIVEN));
    }

    @Test
    void check_moreThanAnswersAskedAllTheTime_isFound() {
        String guess = section("  - id: guess", "  - id: close")
                .replace("    kind: predict\n", "    kind: predict\n    also: [how-sure]\n");
        String four = IntStream.range(0, 4)
                .mapToObj(i -> guess.replace("id: guess", "id: guess-" + i))
                .collect(Collectors.joining());

        assertTrue(lint(SOUND.replace(section("  - id: guess", "  - id: close"), four))
                .contains(LessonProblem.ALSO_OFTEN));
    }

    @Test
    void check_observationBeforePrediction_isFound() {
        String yaml = SOUND.replace(section("  - id: guess", "  - id: close"), "")
                .replace("\"How many watts?\"", "\"Well?\"");

        assertTrue(lint(yaml).contains(LessonProblem.PREDICT_FIRST));
    }

    @Test
    void check_withoutCaution_isFound() {
        String yaml = SOUND.replace(section("  - id: hot", "  - id: check-a"), "");

        assertTrue(lint(yaml).contains(LessonProblem.NO_CAUTION));
    }

    @Test
    void check_withTwoChecks_isFound() {
        String yaml = SOUND.replace(section("  - id: check-a", "  - id: check-b"), "");

        assertTrue(lint(yaml).contains(LessonProblem.NO_CHECK));
    }

    @Test
    void check_stepAfterCheck_isFound() {
        String yaml = SOUND + """
                          - id: bye
                            kind: say
                            text: {en: "Bye.", de: "Ade."}
                        """;

        assertTrue(lint(yaml).contains(LessonProblem.CHECK_NOT_LAST));
    }

    @Test
    void check_longSentence_isFound() {
        String yaml = SOUND.replace("Close it.", "Close it " + "and again ".repeat(13) + ".");

        assertTrue(lint(yaml).contains(LessonProblem.LONG_SENTENCE));
    }

    @Test
    void locate_findingOfLint_pointsToItsLine() {
        String yaml = SOUND.replace("    is: 4.2\n", "    is: 4.9\n");
        LessonReading reading = LessonFixture.read(yaml);
        Finding finding = LessonLint.check(reading.lesson().orElseThrow(), LessonFixture.CATALOGUE)
                .get(0);
        int line = (int) yaml.substring(0, yaml.indexOf("is: 4.9")).lines().count();

        assertEquals(line, reading.locate(finding).position().orElseThrow().line());
    }

    @Test
    void check_unexpectedReading_isToldInFewDigits() {
        String yaml = SOUND.replace("    is: 4.2\n", "    is: 9\n")
                .replace("- join: [coil.2, A.-]", "- {join: [coil.2, A.-], contact_mohm: 7}")
                .replace("is: 4.2}", "is: 4.17}");
        LessonReading reading = LessonFixture.read(yaml);

        List<Finding> found = LessonLint.check(reading.lesson().orElseThrow(), LessonFixture.CATALOGUE);

        // 4.2 V / 1.007 Ω = 4.170804… A
        assertEquals(List.of("coil.current_A", "4.1708", "9"), found.get(0).details());
    }

    @Test
    void read_benchMadeByCuttingNothing_isTold() {
        String yaml = SOUND.replaceFirst(
                quote("    moves:\n      - join: [coil.2, A.-]"), quoteTo("    moves:\n      - cut: [coil.2, A.-]"));

        String told =
                String.join("\n", LessonFixture.texts(LessonFixture.read(yaml).faults()));

        assertTrue(told.contains("nothing to cut"), told);
    }

    private static String section(String from, String to) {
        return SOUND.substring(SOUND.indexOf(from), SOUND.indexOf(to));
    }

    private static String quote(String text) {
        return Pattern.quote(text);
    }

    private static String quoteTo(String text) {
        return Matcher.quoteReplacement(text);
    }

    private static List<Fault> lint(String yaml) {
        LessonReading reading = LessonFixture.read(yaml);
        Lesson lesson = reading.lesson()
                .orElseThrow(() ->
                        new AssertionError(LessonFixture.texts(reading.faults()).toString()));
        return LessonLint.check(lesson, LessonFixture.CATALOGUE).stream()
                .map(Finding::problem)
                .toList();
    }
}
