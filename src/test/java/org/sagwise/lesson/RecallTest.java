package org.sagwise.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RecallTest {

    private static final List<Lesson> TAUGHT = Stream.of(
                    "01-close-the-ring", "02-same-amps-all-round", "03-coil-sets-the-amps", "04-side-by-side")
            .map(LessonFixture::builtIn)
            .toList();

    private final Map<String, List<Answers>> given = new HashMap<>();

    /** Goes through a lesson with every answer right but one. */
    private void go(int lesson, String wrongAt) {
        List<Answers> answers = new ArrayList<>();
        for (Step step : TAUGHT.get(lesson).steps()) {
            if (step instanceof Step.Choose choose) {
                int right = choose.right();
                answers.add(Answers.NONE.chosen(step.id().equals(wrongAt) ? (right == 0 ? 1 : 0) : right));
            } else {
                answers.add(Answers.NONE.with(Answers.State.DONE));
            }
        }
        given.put(TAUGHT.get(lesson).id(), answers);
    }

    private List<Recall.Item> choose(Map<String, Recall.Asked> asked) {
        return Recall.choose(TAUGHT, given, asked, TAUGHT.get(3));
    }

    @Test
    void choose_atTheFirstLesson_asksNothing() {
        assertEquals(List.of(), choose(Map.of()));
    }

    /** No-current-no-volts was missed at the open button: it comes first, and both lessons give one question. */
    @Test
    void choose_ideaThatWasMissed_asksItFirst() {
        go(0, "open-button");
        go(1, "");

        List<Recall.Item> chosen = choose(Map.of());

        assertEquals(2, chosen.size());
        assertEquals("01-close-the-ring", chosen.get(0).lesson().id());
        assertEquals("open-button", chosen.get(0).question().id());
        assertEquals("02-same-amps-all-round", chosen.get(1).lesson().id());
    }

    /** Two ideas were missed; the one that somebody was sure of comes first, though it is of the later lesson. */
    @Test
    void choose_missedBySomebodySure_comesBeforeWhatWasMissedUnsurely() {
        go(0, "check-one-end");
        go(1, "after-coil");
        List<Answers> sure = new ArrayList<>(given.get(TAUGHT.get(1).id()));
        sure.replaceAll(it -> it.choice().isPresent() ? it.sure(Optional.of(Sureness.THINK)) : it);
        int firm = IntStream.range(0, sure.size())
                .filter(i -> TAUGHT.get(1).steps().get(i).id().equals("after-coil"))
                .findFirst()
                .orElseThrow();
        sure.set(firm, sure.get(firm).sure(Optional.of(Sureness.SURE)));
        given.put(TAUGHT.get(1).id(), sure);

        assertEquals("02-same-amps-all-round", choose(Map.of()).get(0).lesson().id());
        sure.replaceAll(it -> it.choice().isPresent() ? it.sure(Optional.of(Sureness.THINK)) : it);
        assertEquals("01-close-the-ring", choose(Map.of()).get(0).lesson().id());
    }

    /** Of what was right, a guess comes back first. */
    @Test
    void choose_rightButGuessed_comesBeforeWhatWasKnown() {
        go(1, "");
        List<Answers> answers = new ArrayList<>(given.get(TAUGHT.get(1).id()));
        int last = answers.size() - 1;
        answers.set(last, answers.get(last).sure(Optional.of(Sureness.GUESS)));
        given.put(TAUGHT.get(1).id(), answers);

        assertEquals(last, choose(Map.of()).get(0).step());
    }

    @Test
    void choose_questionJustRemembered_waits() {
        go(0, "open-button");
        go(1, "");
        Map<String, Recall.Asked> asked = Map.of("01-close-the-ring/open-button", new Recall.Asked(1, 2));

        assertTrue(choose(asked).stream().noneMatch(it -> it.question().id().equals("open-button")));
    }

    /** Remembered once it waits two lessons, twice four, thrice eight; missed, it comes back in the next. */
    @ParameterizedTest
    @CsvSource({"0, 0, false", "0, 1, true", "1, 1, false", "1, 2, true", "2, 3, false", "2, 4, true", "3, 8, true"})
    void isDue_byHowOftenItWasKnown_waitsTwiceAsLongEachTime(int known, int lessons, boolean due) {
        assertEquals(due, new Recall.Asked(known, 0).isDue(lessons));
    }

    @Test
    void after_aMiss_beginsAnew() {
        Recall.Asked known = Recall.Asked.after(Optional.of(new Recall.Asked(2, 1)), true, 5);

        assertEquals(new Recall.Asked(3, 5), known);
        assertEquals(new Recall.Asked(0, 6), Recall.Asked.after(Optional.of(known), false, 6));
    }

    @Test
    void round_ofWhatWasChosen_speaksInNumbersOfTheEngine() {
        go(0, "open-button");
        RecallRound round = RecallRound.of(choose(Map.of()), LessonFixture.CATALOGUE, Locale.GERMAN)
                .orElseThrow();

        RecallRound answered = round.choose(1);

        assertTrue(
                round.question().options().contains("4,20\u00a0V"),
                round.question().options()::toString);
        assertTrue(answered.isMet());
        assertEquals(answered, answered.choose(0), "what is once chosen stays");
        assertEquals(OptionalInt.empty(), round.next().orElseThrow().chosen());
        assertEquals(new Recall.Asked(1, 3), answered.noted(Map.of(), 3).get("01-close-the-ring/open-button"));
    }

    /** Whoever misses an idea is led to a bench that answers it, whichever idea it is. */
    @Test
    void shownAt_everyIdea_isAPredictionThatTheBenchAnswers() {
        List<Lesson> all = BuiltInLessonsTest.lessons();
        List<Idea> nowhere = Stream.of(Idea.values())
                .filter(idea -> idea != Idea.SLIP)
                .filter(idea -> Recall.shownAt(idea, all).isEmpty())
                .toList();

        assertEquals(List.of(), nowhere);
        assertFalse(Recall.missed(all, Map.of()).contains(Idea.SLIP));
    }
}
