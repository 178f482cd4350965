package org.sagwise.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.sagwise.lesson.IdeasCheck.Form;
import org.sagwise.lesson.IdeasCheck.Objective;

class IdeasCheckTest {

    /** The same lint as for lessons: no answer gives itself away by form. */
    @ParameterizedTest
    @EnumSource
    void questions_ofAForm_giveNothingAway(Form form) {
        Lesson lesson = LessonFixture.builtIn("01-close-the-ring").withSteps(List.copyOf(IdeasCheck.questions(form)));

        // What is said to who chose an answer is the idea behind it, which may be short.
        assertEquals(
                List.of(),
                OptionRules.check(lesson).stream()
                        .filter(found -> found.problem() != LessonProblem.THIN_REPLY)
                        .toList());
        assertEquals(12, lesson.steps().size());
    }

    /** Who always takes the same letter gets about a third. */
    @ParameterizedTest
    @EnumSource
    void right_inAForm_standsInEveryPlace(Form form) {
        for (int place = 0; place < 3; place++) {
            List<Integer> same = Collections.nCopies(12, place);
            int shown = IdeasCheck.shown(form, same).size();
            assertTrue(shown >= 2 && shown <= 6, form + " " + place + ": " + shown);
        }
    }

    @Test
    void shown_allRight_isEveryObjective() {
        List<Integer> right =
                IdeasCheck.questions(Form.B).stream().map(Step.Choose::right).toList();

        assertEquals(List.of(Objective.values()), IdeasCheck.shown(Form.B, right));
        assertEquals(List.of(), IdeasCheck.shown(Form.B, List.of()));
    }

    /** From the formula of Hake 1998: 40 % to 70 % is half of the 60 % that were missing. */
    @ParameterizedTest
    @CsvSource({"0.4, 0.7, 0.5", "0, 0.48, 0.48", "0.5, 0.5, 0", "0.5, 0.25, -0.5", "0.9, 1, 1"})
    void gain_ofShares_isWhatWasLearnedOfWhatWasLeft(double before, double after, double gain) {
        assertEquals(
                gain,
                ClassGain.gain(OptionalDouble.of(before), OptionalDouble.of(after))
                        .orElseThrow(),
                1e-12);
    }

    @Test
    void gain_nothingLeftToLearnOrNobodyThere_isNone() {
        assertTrue(ClassGain.gain(OptionalDouble.of(1), OptionalDouble.of(1)).isEmpty());
        assertTrue(new ClassGain(0, 10, List.of(0), List.of(5)).gain(0).isEmpty());
    }

    @Test
    void gain_ofAClass_isThatOfItsAverages() {
        // 10 learners, 2 questions: 4 + 2 of 20 before, 8 + 6 of 20 after: (0.7 - 0.3) / 0.7.
        ClassGain gain = new ClassGain(10, 10, List.of(4, 2), List.of(8, 6));

        assertEquals(0.4 / 0.7, gain.gain().orElseThrow(), 1e-12);
        assertEquals(4.0 / 6, gain.gain(0).orElseThrow(), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> new ClassGain(3, 3, List.of(4, 2), List.of(1, 1)));
    }

    /** 3 of 10, then 6 of 10, where both were counted; the second objective was counted after only. */
    @Test
    void gain_ofWhatNobodyCounted_isUnknownAndLeftOut() {
        ClassGain gain = new ClassGain(10, 10, List.of(3, ClassGain.UNCOUNTED), List.of(6, 10));

        assertTrue(gain.shareBefore(1).isEmpty());
        assertTrue(gain.gain(1).isEmpty());
        assertEquals(0.3, gain.shareBefore().orElseThrow(), 1e-12);
        assertEquals(0.8, gain.shareAfter().orElseThrow(), 1e-12);
        assertEquals(0.3 / 0.7, gain.gain().orElseThrow(), 1e-12);
    }

    @Test
    void ideas_ofBothForms_areThoseOfLessons() {
        var taught = LessonSet.ideas(BuiltInLessonsTest.lessons());
        for (Form form : Form.values()) {
            IntStream.range(0, 12)
                    .mapToObj(IdeasCheck.questions(form)::get)
                    .flatMap(question -> question.choices().stream())
                    .flatMap(choice -> choice.idea().stream())
                    .forEach(idea -> assertTrue(taught.contains(idea), idea.word()));
        }
    }
}
