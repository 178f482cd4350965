package org.sagwise.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.edit.CutBetween;

/** A lesson is changed under a learner, and the language is. */
class ReloadTest {

    private static final Lesson LESSON = LessonFixture.builtIn("01-close-the-ring");

    private static Lesson with(List<Step> steps) {
        return new Lesson(
                LESSON.id(),
                LESSON.title(),
                LESSON.goal(),
                LESSON.minutes(),
                LESSON.evening(),
                LESSON.needs(),
                LESSON.note(),
                LESSON.benches(),
                LESSON.names(),
                steps);
    }

    private static LessonPlayer atStepFour() {
        LessonPlayer reading = LessonPlayer.begin(LESSON, LessonFixture.CATALOGUE, Locale.ENGLISH)
                .next()
                .choose(2)
                .next();
        return reading.edited(reading.bench().with(Press.HELD)).type(0).next();
    }

    @Test
    void reloaded_withAStepBefore_staysAtTheStepOfThatName() {
        List<Step> more = new ArrayList<>(LESSON.steps());
        more.add(
                1,
                new Step.Say(new Step.Head(
                        "more", LESSON.title(), Optional.empty(), Optional.empty(), List.of(), Optional.empty())));
        LessonPlayer there = atStepFour();

        LessonPlayer now = there.reloaded(with(more));

        assertEquals("open-button", there.step().id());
        assertEquals("open-button", now.step().id());
        assertEquals(there.at() + 1, now.at());
        assertEquals(2, now.allAnswers().get(2).choice().orElseThrow());
    }

    @Test
    void reloaded_withTheStepGone_isAtTheOneBefore() {
        List<Step> fewer = new ArrayList<>(LESSON.steps());
        fewer.remove(3);

        assertEquals("gap-amps", atStepFour().reloaded(with(fewer)).step().id());
    }

    @Test
    void reloaded_withTextsChangedAlone_keepsTheBenchAsItIs() {
        LessonPlayer there = atStepFour();
        Link first = there.bench().links().get(0);
        Scenario mine = new CutBetween(first.from(), first.to()).apply(there.bench());

        assertEquals(mine, there.edited(mine).reloaded(with(LESSON.steps())).bench());
    }

    @Test
    void reloaded_withOtherAnswers_forgetsWhatWasChosen() {
        List<Step> steps = new ArrayList<>(LESSON.steps());
        Step.Choose question = (Step.Choose) steps.get(1);
        steps.set(
                1,
                new Step.Choose(
                        question.head(), question.role(), question.choices().subList(0, 3), question.order()));

        assertTrue(atStepFour().reloaded(with(steps)).allAnswers().get(1).isOpen());
    }

    @Test
    void speaking_inTheMiddle_renamesPartsAndKeepsWhatWasDone() {
        LessonPlayer there = atStepFour();
        Scenario mine = there.bench()
                .withPart("A", part -> part.with("label", "my cell"))
                .pressed();

        LessonPlayer renamed = there.edited(mine);

        LessonPlayer german = renamed.speaking(Locale.GERMAN);

        assertEquals("Feuertaster", german.bench().part("fire").orElseThrow().name());
        assertEquals("my cell", german.bench().part("A").orElseThrow().name());
        assertTrue(german.bench().fired());
        assertEquals("Ein Ring mit einer Lücke", german.bench().title());
        assertEquals(renamed.allAnswers(), german.allAnswers());
        assertEquals(
                "Feuertaster", german.back().bench().part("fire").orElseThrow().name());
        assertNotEquals(
                there.say(there.step().head().text()),
                german.say(german.step().head().text()));
    }
}
