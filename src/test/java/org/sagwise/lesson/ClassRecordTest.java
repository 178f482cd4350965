package org.sagwise.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.sagwise.lesson.ClassRecord.OfLesson;
import org.sagwise.lesson.ClassRecord.Trouble;
import org.sagwise.lesson.ClassRecord.Why;
import org.sagwise.lesson.IdeasCheck.Form;

class ClassRecordTest {

    private static final Lesson LESSON = LessonFixture.builtIn("04-side-by-side");

    /** Somebody who takes the same place of every question. */
    private static LearnedCode code(int place, long seed) {
        LessonPlayer player = LessonPlayer.begin(LESSON, LessonFixture.CATALOGUE, Locale.ENGLISH)
                .shuffled(new Shuffle(seed));
        for (int i = 0; i < LESSON.steps().size(); i++) {
            LessonPlayer there = player.jump(i);
            player = there.step() instanceof Step.Choose choose
                            && place < choose.choices().size()
                    ? there.choose(place < 0 ? choose.right() : place)
                    : there;
        }
        return LearnedCode.of(player);
    }

    @Test
    void text_ofARun_readsBack() {
        LearnedCode code = code(0, 4711);

        assertTrue(code.text().matches("learned1\\.04-side-by-side\\.a+\\.[2-9a-z]{6}"), code.text());
        assertEquals(Optional.of(code), LearnedCode.read(code.text()));
        assertEquals(Optional.of(code), LearnedCode.read("  " + code.text().toUpperCase(Locale.ROOT) + "\n"));
    }

    @Test
    void read_withAnyOneLetterWrong_isRefused() {
        String text = code(0, 4711).text();
        for (int i = 0; i < text.length(); i++) {
            for (char letter : "abcdyn-9z.".toCharArray()) {
                if (letter != text.charAt(i)) {
                    String wrong = text.substring(0, i) + letter + text.substring(i + 1);
                    assertEquals(Optional.empty(), LearnedCode.read(wrong), wrong);
                }
            }
            assertEquals(Optional.empty(), LearnedCode.read(text.substring(0, i)));
        }
    }

    @Test
    void of_aWholeConversation_countsLearnersAndIdeas() {
        String wrong = code(0, 1).text();
        String right = code(-1, 2).text();

        ClassRecord record = ClassRecord.of(
                "Mia: here is mine " + wrong + " thanks!\n\nYusuf: (" + right + ").\nlater again: " + right,
                List.of(LESSON));

        OfLesson counted = record.lessons().get(0);
        assertEquals(LESSON, counted.lesson());
        assertEquals(2, counted.learners());
        // In the first prediction the first answer is the one with twice the current.
        ClassRecord.Count twice = counted.ideas().stream()
                .filter(it -> it.idea() == Idea.TWO_CELLS_TWICE_EVERYTHING)
                .findFirst()
                .orElseThrow();
        assertEquals(1, twice.missed());
        assertEquals(1, twice.met());
        assertEquals(List.of(new Trouble(right, Why.TWICE)), record.troubles());
        assertEquals(wrong + "\n" + right, record.text());
        assertEquals(
                record.lessons(), ClassRecord.of(record.text(), List.of(LESSON)).lessons());
    }

    @Test
    void of_sameAnswersInTwoRuns_countTwice() {
        ClassRecord record = ClassRecord.of(code(0, 1).text() + " " + code(0, 2).text(), List.of(LESSON));

        assertEquals(2, record.lessons().get(0).learners());
    }

    @Test
    void of_codesThatDoNotCount_saysWhy() {
        String good = code(0, 1).text();
        LearnedCode older = new LearnedCode("04-side-by-side", "abc", "222", "3");
        LearnedCode other = new LearnedCode("my-own", "a", "222", "3");

        ClassRecord record = ClassRecord.of(
                String.join("\n", good.replace(".a", ".b"), older.text(), other.text(), "learned2.x.y"),
                List.of(LESSON));

        assertEquals(
                List.of(Why.MISTYPED, Why.OTHER_VERSION, Why.UNKNOWN_LESSON, Why.MISTYPED),
                record.troubles().stream().map(Trouble::why).toList());
        assertTrue(record.codes().isEmpty());
        assertTrue(ClassRecord.of("nothing of ours, I learned. a lot", List.of(LESSON))
                .troubles()
                .isEmpty());
    }

    @Test
    void fits_anotherSetOfIdeas_isAnotherVersion() {
        LearnedCode code = code(0, 1);

        assertTrue(code.fits(LearnedCode.questions(LESSON)));
        assertFalse(code.fits(LearnedCode.questions(LESSON).subList(0, 2)));
        assertFalse(new LearnedCode(code.lesson(), "y".repeat(code.answers().length()), code.run(), code.shape())
                .fits(LearnedCode.questions(LESSON)));
    }

    @Test
    void right_inTheCheckOfIdeas_countsByObjective() {
        List<Integer> all =
                IdeasCheck.questions(Form.A).stream().map(Step.Choose::right).toList();
        List<Integer> none = Collections.nCopies(12, -1);

        ClassRecord record = ClassRecord.of(
                LearnedCode.of(Form.A, all, 5).text() + " "
                        + LearnedCode.of(Form.A, none, 6).text(),
                List.of());

        assertEquals(List.of(), record.troubles());
        assertEquals(2, record.learners(Form.A));
        assertEquals(0, record.learners(Form.B));
        assertEquals(Collections.nCopies(12, 1), record.right(Form.A));
    }
}
