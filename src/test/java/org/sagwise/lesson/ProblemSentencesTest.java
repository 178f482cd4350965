package org.sagwise.lesson;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.sagwise.scenario.Finding;

class ProblemSentencesTest {

    @ParameterizedTest
    @EnumSource(LessonProblem.class)
    void sentence_ofProblem_isThereInBothLanguages(LessonProblem problem) {
        Finding finding = Finding.of("", problem, problem == LessonProblem.BROKEN_YAML ? "tab" : "a", "b", "c");

        assertFalse(finding.sentence(Locale.ENGLISH).isBlank());
        assertFalse(finding.sentence(Locale.GERMAN).isBlank());
    }

    @ParameterizedTest
    @EnumSource(Idea.class)
    void sentence_ofIdea_isThereInBothLanguages(Idea idea) {
        assertFalse(idea.sentence(Locale.ENGLISH).isBlank());
        assertFalse(idea.sentence(Locale.GERMAN).isBlank());
    }
}
