package org.sagwise.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.TerminalRef;

class LessonPlayerTest {

    private static final Link CLOSING = Link.ideal(new TerminalRef("A", "-"), new TerminalRef("coil", "2"));

    private final Lesson lesson =
            LessonFixture.read(LessonFixture.resource("sound.yaml")).lesson().orElseThrow();

    private final LessonPlayer start = LessonPlayer.begin(lesson, LessonFixture.CATALOGUE, Locale.GERMAN);

    private LessonPlayer atDo() {
        return start.choose(1).next();
    }

    /** The second prediction of the first lesson asks how sure one is, too. */
    private static LessonPlayer asked() {
        return LessonPlayer.begin(LessonFixture.builtIn("01-close-the-ring"), LessonFixture.CATALOGUE, Locale.ENGLISH)
                .jump(3)
                .choose(0);
    }

    @Test
    void choose_whereHowSureIsAsked_keepsTheVeilUntilThatIsSaid() {
        LessonPlayer chosen = asked();

        assertTrue(chosen.isAskingHowSure());
        assertFalse(chosen.mayTouch());
        assertFalse(chosen.mayGoOn());
        assertEquals(0, chosen.choose(1).answers().choice().orElseThrow(), "what is once chosen stays");
        LessonPlayer sure = chosen.sure(Optional.of(Sureness.SURE));
        assertTrue(sure.mayTouch() && sure.mayGoOn() && !sure.isAskingHowSure());
        assertEquals(sure.answers(), sure.sure(Optional.of(Sureness.GUESS)).answers());
    }

    @Test
    void summary_ofWhoWasSureAndMissed_saysSo() {
        Verdict firm = asked().sure(Optional.of(Sureness.SURE)).summary().get(1);
        Verdict lucky = asked().jump(3).reset().summary().get(1);

        assertTrue(firm.isFirmMiss() && !firm.isLuck());
        assertFalse(lucky.isFirmMiss() || lucky.isLuck());
    }

    /** A class raises its hands; nobody is asked. */
    @Test
    void sure_withoutAWord_goesOnAllTheSame() {
        assertTrue(asked().sure(Optional.empty()).mayTouch());
    }

    @Test
    void mayTouch_beforePrediction_isLocked() {
        assertFalse(start.mayTouch());
        assertFalse(start.mayGoOn());
        assertSame(start, start.next());
        assertTrue(start.choose(1).mayTouch());
    }

    /** Being welcomed to a bench must not show what is asked about it in the next step. */
    @Test
    void mayTouch_toldBeforePrediction_isLockedUntilAnswered() {
        Step told = new Step.Say(new Step.Head(
                "welcome", lesson.title(), Optional.empty(), Optional.empty(), List.of(), Optional.empty()));
        List<Step> steps = new ArrayList<>(lesson.steps());
        steps.add(0, told);
        LessonPlayer welcomed = LessonPlayer.begin(
                new Lesson(
                        lesson.id(),
                        lesson.title(),
                        lesson.goal(),
                        lesson.minutes(),
                        lesson.evening(),
                        lesson.needs(),
                        lesson.note(),
                        lesson.benches(),
                        lesson.names(),
                        steps),
                LessonFixture.CATALOGUE,
                Locale.ENGLISH);

        assertFalse(welcomed.mayTouch());
        assertTrue(welcomed.mayGoOn());
        assertFalse(welcomed.next().mayTouch());
        assertTrue(welcomed.next().choose(1).back().mayTouch());
    }

    @Test
    void choose_twice_keepsFirstAnswer() {
        LessonPlayer wrong = start.choose(1).choose(0);

        assertEquals(1, wrong.answers().choice().orElseThrow());
    }

    @Test
    void bench_inGerman_namesItsParts() {
        assertEquals("Wicklung", start.bench().part("coil").orElseThrow().name());
        assertEquals("Lücke", start.bench().title());
    }

    @Test
    void edited_byAnyRoute_isDoneByState() {
        LessonPlayer open = atDo();
        assertFalse(open.mayGoOn());
        assertEquals(1, open.open().size());

        LessonPlayer done = open.edited(open.bench().plus(CLOSING));

        assertTrue(done.mayGoOn());
        assertEquals(Answers.State.DONE, done.answers().state());
    }

    @Test
    void edited_spoiltAfterDone_staysDone() {
        LessonPlayer done = atDo().edited(atDo().bench().plus(CLOSING));

        LessonPlayer spoilt = done.edited(done.bench().withLinks(List.of()));

        assertTrue(spoilt.mayGoOn());
        assertEquals(1, spoilt.open().size());
    }

    @Test
    void hint_askedThrice_givesBothAndNoMore() {
        LessonPlayer hinted = atDo().hint().hint().hint();

        assertEquals(List.of("Schau auf die Wicklung.", "Verbinde sie mit Minus."), hinted.hints());
        assertFalse(hinted.hasMoreHints());
    }

    @Test
    void showSolution_ofDo_laysItOutAndMarksIt() {
        LessonPlayer shown = atDo().showSolution();

        assertEquals(Answers.State.SHOWN, shown.answers().state());
        assertTrue(shown.open().isEmpty());
    }

    @Test
    void type_wrongReading_staysOpenAndCounts() {
        LessonPlayer reading = atDo().skip();

        LessonPlayer typed = held(reading).type(42).type(4.21);

        assertFalse(reading.type(42).mayGoOn());
        assertTrue(typed.mayGoOn());
        assertEquals(2, typed.answers().attempts());
    }

    /** A number that shows only while the button is held cannot have been read without. */
    @Test
    void type_rightReadingNobodyHasSeen_asksToHoldTheButton() {
        LessonPlayer reading = atDo().skip();

        LessonPlayer guessed = reading.type(4.2);

        assertFalse(guessed.mayGoOn());
        assertTrue(guessed.mustHold());
        assertTrue(held(guessed).type(4.2).mayGoOn());
    }

    private static LessonPlayer held(LessonPlayer player) {
        return player.edited(player.bench().with(Press.HELD))
                .edited(player.bench().with(Press.RELEASED));
    }

    @Test
    void verdicts_afterObservation_setPredictionBesideOutcome() {
        LessonPlayer seen = atDo().skip().skip();

        Verdict verdict = seen.verdicts().get(0);

        assertEquals(Optional.of("4,20 A"), verdict.said());
        assertEquals("Nichts", verdict.right());
        assertFalse(verdict.met());
        assertEquals(Optional.of(Idea.ONE_WIRE_IS_ENOUGH), verdict.idea());
        assertEquals("Nein: 4,20\u00a0A fließen erst dann.", verdict.reply());
    }

    @Test
    void estimate_closeEnough_isMet() {
        LessonPlayer guess = atDo().skip().skip();

        assertTrue(guess.type(17).summary().get(1).met());
        assertFalse(guess.type(15).summary().get(1).met());
    }

    @Test
    void back_afterNext_findsBenchAsItWasLeft() {
        LessonPlayer done = atDo().edited(atDo().bench().plus(CLOSING));
        LessonPlayer further = done.next();
        LessonPlayer spoilt = further.edited(further.bench().withLinks(List.of()));

        LessonPlayer back = spoilt.back();

        assertEquals(done.bench(), back.bench());
        assertTrue(back.mayGoOn());
    }

    @Test
    void reset_ofDo_laysOutItsBeginning() {
        LessonPlayer done = atDo().edited(atDo().bench().plus(CLOSING)).hint();

        LessonPlayer fresh = done.reset();

        assertEquals(atDo().bench(), fresh.bench());
        assertEquals(Answers.NONE, fresh.answers());
    }

    @Test
    void reset_ofPrediction_keepsTheAnswer() {
        assertEquals(1, start.choose(1).reset().answers().choice().orElseThrow());
    }

    @Test
    void jump_toLaterStep_laysOutItsBench() {
        LessonPlayer there = start.jump(2);

        assertEquals("read", there.step().id());
        assertTrue(held(there).type(4.2).mayGoOn());
    }

    @Test
    void summary_atEnd_listsEveryQuestion() {
        LessonPlayer player = start;
        while (!player.isLast()) {
            player = player.skip();
        }

        assertEquals(5, player.skip().summary().size());
        assertTrue(player.summary().stream().noneMatch(Verdict::met));
    }

    /**
     * A prediction, its reading, and then a change: the reply must speak of the bench before it.
     */
    @Test
    void verdicts_beforeNextChange_areDue() {
        Lesson built = LessonFixture.builtIn("16-explain-a-mistake");
        LessonPlayer player = LessonPlayer.begin(built, LessonFixture.CATALOGUE, Locale.ENGLISH);
        while (!player.step().id().equals("biggest")) {
            player = Pupil.solve(player).next();
        }
        while (!player.step().id().equals("match")) {
            player = Pupil.solve(player).next();
        }

        assertEquals("match", player.step().id());
        assertEquals(
                "Right: 12.7\u00a0W of heat in a bit of wire.",
                player.verdicts().get(1).reply());
    }
}
