package org.sagwise.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sagwise.file.LessonReading;

class LessonReaderTest {

    @Test
    void read_fileFullOfMistakes_namesEachWithLineAndColumn() {
        LessonReading reading = LessonFixture.read(LessonFixture.resource("mistakes.yaml"));

        List<String> found = reading.faults().stream()
                .map(fault -> fault.position().orElseThrow() + " " + fault.problem())
                .toList();

        assertEquals("""
                2:8 MISSING_LANGUAGE
                3:10 NOT_A_NUMBER
                4:10 OUT_OF_RANGE
                5:1 UNKNOWN_KEY
                7:28 UNKNOWN_KEY
                10:11 BENCH_FILE
                13:9 UNKNOWN_BENCH
                19:9 BAD_ID
                23:7 TOO_FEW
                23:7 RIGHT_ANSWERS
                23:9 NO_IDEA
                25:15 UNKNOWN_WORD
                32:47 NOT_A_NUMBER
                33:9 ONE_OF
                34:18 BAD_TERMINAL
                35:18 UNKNOWN_WORD
                36:9 ONE_OF
                38:9 ONE_OF
                39:12 TOO_FEW
                40:9 DUPLICATE_ID
                43:14 BAD_READING
                45:5 DUPLICATE_KEY
                47:11 UNKNOWN_WORD
                49:5 NOT_A_GROUP
                """, String.join("\n", found) + "\n");
        assertTrue(reading.lesson().isEmpty());
    }

    @Test
    void order_ofAnswers_isFreeUnlessItIsToBeKept() {
        String yaml = LessonFixture.resource("sound.yaml");
        assertEquals(Step.Order.ANY, firstQuestion(yaml).order());
        String kept = yaml.replaceFirst("(?m)^( +)choices:", "$1order: kept\n$1choices:");
        assertEquals(Step.Order.KEPT, firstQuestion(kept).order());

        LessonReading wrong = LessonFixture.read(kept.replace("order: kept", "order: mixed"));
        assertEquals(
                List.of(LessonProblem.UNKNOWN_WORD),
                wrong.faults().stream().map(it -> it.problem()).toList());
    }

    private static Step.Choose firstQuestion(String yaml) {
        LessonReading reading = LessonFixture.read(yaml);
        return reading
                .lesson()
                .orElseThrow(() ->
                        new AssertionError(LessonFixture.texts(reading.faults()).toString()))
                .steps()
                .stream()
                .filter(Step.Choose.class::isInstance)
                .map(Step.Choose.class::cast)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void text_ofEveryProblem_fillsItsBlanks() {
        LessonReading reading = LessonFixture.read(LessonFixture.resource("mistakes.yaml"));

        String all = LessonFixture.texts(reading.faults()).stream().collect(Collectors.joining());

        assertTrue(!all.contains("{0}") && !all.contains("{1}"), all);
        assertTrue(all.contains("minutes (line 3, column 10): ninety is no number."), all);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "lesson: [1",
                "a: &x [1]\nb: *x",
                "- 1\n- 2",
                "just text",
                "lesson: 1\n---\nlesson: 1",
                "\tlesson: 1",
                "? [a, b]\n: c",
                "!!java.lang.Runtime {}",
                "lesson: 2"
            })
    void read_otherText_isRefusedInWords(String yaml) {
        LessonReading reading = LessonFixture.read(yaml);

        assertTrue(reading.lesson().isEmpty());
        assertTrue(!reading.faults().isEmpty());
        LessonFixture.texts(reading.faults()).forEach(text -> assertTrue(!text.isBlank()));
    }

    @Test
    void read_aliasBomb_isRefusedQuickly() {
        StringBuilder yaml = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 30; i++) {
            yaml.append("a%d: &a%d [*a%d, *a%d, *a%d, *a%d]\n".formatted(i, i, i - 1, i - 1, i - 1, i - 1));
        }

        LessonReading reading = LessonFixture.read(yaml.toString());

        assertTrue(reading.faults().stream().anyMatch(it -> it.problem() == LessonProblem.ALIAS));
    }

    @Test
    void read_deepNesting_isRefused() {
        LessonReading reading = LessonFixture.read("a: " + "[".repeat(2000) + "]".repeat(2000));

        assertEquals(LessonProblem.BROKEN_YAML, reading.faults().get(0).problem());
    }

    @Test
    void read_hugeFile_isRefused() {
        LessonReading reading = LessonFixture.read("a: " + "x".repeat(600_000));

        assertEquals(LessonProblem.TOO_LARGE, reading.faults().get(0).problem());
    }
}
