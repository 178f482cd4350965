package org.sagwise.ui.clock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.sagwise.run.RunEnd;
import org.sagwise.run.RunEvent;
import org.sagwise.run.RunPlan;
import org.sagwise.run.RunResult;
import org.sagwise.run.Runner;
import org.sagwise.run.playback.Halt;
import org.sagwise.run.playback.Now;
import org.sagwise.run.playback.Remark;
import org.sagwise.run.playback.Speed;
import org.sagwise.scenario.Press;

/** Time on the bench, with real time that passes only when the test says so. */
class ClockModelTest {

    private final FakeTime time = new FakeTime("two-cells-side-by-side");
    private final ClockModel clock = time.clock;

    @Test
    void time_notSetGoing_standsAtTheStart() {
        time.press();
        time.pass(5);

        assertEquals(0, time.now().timeS());
        assertEquals(1, time.charge());
        assertTrue(time.coilW() > 15);
    }

    @Test
    void time_going_passesWithRealTimeTimesTheSpeed() {
        clock.go();
        time.pass(2);
        assertEquals(2, time.now().timeS(), 1e-6);

        clock.setSpeed(Speed.SIXTY);
        time.pass(1);
        assertEquals(62, time.now().timeS(), 1e-6);
    }

    @Test
    void speed_changedBetweenFrames_countsFromThen() {
        clock.go();
        time.let(0.02);
        clock.setSpeed(Speed.SIX_HUNDRED);
        clock.tick();

        assertEquals(0.02, time.now().timeS(), 1e-9);
    }

    @Test
    void button_heldForSeconds_deepensTheSagAndUsesCharge() {
        clock.go();
        time.press();
        double atOnceV = time.sagV();
        time.pass(20);

        assertTrue(time.sagV() > 1.1 * atOnceV, time.sagV() + " V after " + atOnceV + " V");
        assertTrue(time.charge() < 0.999);
        assertEquals(1, time.now().presses());
        assertEquals(Press.HELD, time.now().press());
    }

    @Test
    void button_letGo_leavesTheCellsToRecover() {
        clock.go();
        time.press();
        time.pass(20);
        double before = time.charge();
        time.release();
        double atOnceV = time.sagV();
        // Two slow sags fade, the quicker with some 33 s: Chen and Rincón-Mora, 2006.
        time.pass(60);

        assertTrue(atOnceV > 0);
        assertTrue(time.sagV() < 0.6 * atOnceV);
        // Nothing is drawn; the cell beside it, which gave less, gives it back a trace.
        assertTrue(time.charge() >= before);
        assertEquals(before, time.charge(), 3e-4);
    }

    @Test
    void button_pressedBetweenTwoFrames_isNotLost() {
        clock.go();
        time.let(0.01);
        time.press();
        time.let(0.02);
        time.release();
        time.let(0.01);
        clock.tick();

        assertEquals(1, time.now().presses());
        assertEquals(0.04, time.now().timeS(), 1e-9);
        assertEquals(
                0.02,
                clock.course().orElseThrow().states().stream()
                        .mapToDouble(state -> state.firedS())
                        .max()
                        .orElse(0),
                1e-9);
    }

    @Test
    void pause_whileGoing_standsAndKeepsTheMoment() {
        clock.go();
        time.press();
        time.pass(3);
        clock.pause();
        double charge = time.charge();
        time.pass(10);

        assertEquals(3, time.now().timeS(), 1e-6);
        assertEquals(charge, time.charge());
        assertTrue(time.coilW() > 15);

        time.release();
        assertEquals(0, time.coilW());
        assertEquals(charge, time.charge());
    }

    @Test
    void gap_muchLongerThanAFrame_isNoPassingOfTime() {
        clock.go();
        time.let(3600);
        clock.tick();

        assertTrue(time.now().timeS() <= 0.25);
    }

    @Test
    void slowMachine_manyFramesWithoutAnAnswer_lagsAndOwesNoMoreThanHalfASecond() {
        clock.go();
        time.slowDown();
        time.pass(10);
        time.catchUp();
        time.pass(0.05);
        time.pass(0.05);

        assertTrue(time.now().timeS() > 0.4 && time.now().timeS() < 1, "at " + time.now());
    }

    @Test
    void turnTo_anEarlierMoment_showsWhatWasThen() {
        clock.go();
        time.pass(2);
        time.press();
        time.pass(8);
        double chargeThen = time.charge();
        time.pass(30);
        time.release();
        clock.turnTo(10);

        assertEquals(10, time.now().timeS());
        assertEquals(40, time.now().endS(), 1e-6);
        assertEquals(chargeThen, time.charge(), 1e-6);
        assertTrue(time.coilW() > 15, "the button was held then");
        assertFalse(clock.goingProperty().get());
    }

    @Test
    void turnTo_moreOftenThanCanBeComputed_endsAtTheLast() {
        clock.go();
        time.pass(20);
        clock.pause();
        time.slowDown();
        clock.turnTo(3);
        clock.turnTo(7);
        clock.turnTo(11);
        time.catchUp();

        assertEquals(11, time.now().timeS());
    }

    @Test
    void go_fromAnEarlierMoment_forgetsWhatCameAfter() {
        clock.go();
        time.press();
        time.pass(20);
        time.release();
        clock.turnTo(5);
        clock.go();
        time.pass(1);

        assertEquals(6, time.now().timeS(), 1e-6);
        assertEquals(6, time.now().endS(), 1e-6);
        assertEquals(6, clock.course().orElseThrow().endS(), 1e-6);
        assertEquals(2, clock.course().orElseThrow().turns().size());
    }

    @Test
    void steps_byASecondAndByAPress_goAlongWhatWasRecorded() {
        clock.go();
        time.pass(2);
        time.press();
        time.pass(3);
        time.release();
        time.pass(5);
        clock.pause();

        clock.steps().pressBack();
        assertEquals(2, time.now().timeS(), 1e-6);
        clock.steps().back();
        assertEquals(1, time.now().timeS(), 1e-6);
        clock.steps().pressOn();
        assertEquals(2, time.now().timeS(), 1e-6);
        clock.steps().pressOn();
        assertEquals(10, time.now().timeS(), 1e-6);
    }

    @Test
    void stepOn_atTheEnd_letsASecondPassWithTheButtonAsItIs() {
        time.press();
        clock.steps().on();

        assertEquals(1, time.now().timeS(), 1e-9);
        assertEquals(1, time.now().presses());
        assertTrue(time.charge() < 1);
    }

    @Test
    void edit_ofTheCircuit_putsTimeBackAndSaysSo() {
        clock.go();
        time.press();
        time.pass(5);
        time.bench.edit("more ohms", scenario -> scenario.withAmbientC(35));

        assertEquals(Now.START, time.now());
        assertFalse(clock.goingProperty().get());
        assertEquals(Remark.STARTED_OVER, clock.remarkProperty().get());
        assertEquals(1, time.charge());
        assertTrue(clock.course().isEmpty());
    }

    @Test
    void edit_ofWhereThingsLie_leavesTimeAlone() {
        clock.go();
        time.press();
        time.pass(5);
        double charge = time.charge();
        time.bench.edit("title", scenario -> scenario.withTitle("Another"));

        assertEquals(5, time.now().timeS(), 1e-6);
        assertEquals(charge, time.charge());
        assertTrue(clock.goingProperty().get());
    }

    /** Nobody has edited anything yet, and still this is the same bench. */
    @Test
    void words_inAnotherLanguage_leaveTimeAlone() {
        clock.go();
        time.press();
        time.pass(5);
        double charge = time.charge();
        time.bench.rewrite(scenario -> scenario.withTitle("Eine andere"));

        assertEquals(5, time.now().timeS(), 1e-6);
        assertEquals(charge, time.charge());
        assertTrue(clock.goingProperty().get());
        assertEquals(Remark.NOTHING, clock.remarkProperty().get());
    }

    @Test
    void document_openedAgain_beginsAtTheStart() {
        clock.go();
        time.press();
        time.pass(5);
        time.bench.open(time.bench.scenario());

        assertEquals(Now.START, time.now());
        assertEquals(1, time.charge());
        assertEquals(Remark.NOTHING, clock.remarkProperty().get());
    }

    @Test
    void cutoff_whileGoing_stopsTheClockThereAndLetsItGoOn() {
        clock.setSpeed(Speed.SIX_HUNDRED);
        time.press();
        clock.go();
        for (int i = 0; i < 2000 && clock.goingProperty().get(); i++) {
            time.pass(0.05);
        }

        Halt halt = clock.haltProperty().get().orElseThrow();
        assertEquals(
                RunEvent.Kind.CUTOFF,
                halt.events().get(halt.events().size() - 1).kind());
        assertEquals(halt.state().timeS(), time.now().timeS());
        assertTrue(halt.end().isEmpty());

        clock.setSpeed(Speed.ONE);
        clock.go();
        time.pass(0.1);
        assertTrue(clock.haltProperty().get().isEmpty());
        assertNotEquals(halt.state().timeS(), time.now().timeS());
    }

    @Test
    void vent_endsTheRun() {
        FakeTime clip = new FakeTime("side-by-side-one-reversed");
        clip.clock.setSpeed(Speed.SIXTY);
        for (int i = 0; i < 2000 && !clip.now().isOver(); i++) {
            clip.clock.go();
            clip.pass(0.1);
        }

        assertTrue(clip.now().isOver(), "at " + clip.now());
        double endS = clip.now().timeS();
        clip.clock.go();
        clip.clock.steps().on();
        clip.pass(1);
        assertEquals(endS, clip.now().timeS());
    }

    @Test
    void runDown_ofAPair_endsLikeTheRunnerAndCanBeTurnedBack() {
        RunResult expected = Runner.run(time.bench.assessment().bench(), RunPlan.USUAL);
        clock.startRunDown();

        assertEquals(expected.last().timeS(), time.now().timeS());
        assertEquals(expected.last().presses(), time.now().presses());
        Halt halt = clock.haltProperty().get().orElseThrow();
        assertEquals(RunEnd.CUTOFF, halt.end().orElseThrow());

        clock.turnTo(61);
        assertEquals(3, time.now().presses());
        assertTrue(time.coilW() > 10);
    }

    @Test
    void runDown_calledOff_keepsWhatItHasComeTo() {
        time.slowDown();
        clock.startRunDown();
        assertTrue(clock.runDown().progressProperty().get().isPresent());
        clock.runDown().cancel();
        time.catchUp();

        assertTrue(clock.runDown().progressProperty().get().isEmpty());
        assertEquals(30, time.now().timeS(), 1e-6);
        assertEquals(
                RunEnd.CANCELLED, clock.haltProperty().get().orElseThrow().end().orElseThrow());
    }

    @Test
    void runDown_editedMeanwhile_isDropped() {
        time.slowDown();
        clock.startRunDown();
        time.bench.edit("warmer", scenario -> scenario.withAmbientC(35));
        time.catchUp();

        assertEquals(Now.START, time.now());
        assertTrue(clock.haltProperty().get().isEmpty());
        assertEquals(Remark.STARTED_OVER, clock.remarkProperty().get());
    }

    @Test
    void event_thatStopsNothing_isToldInPassing() {
        FakeTime few = new FakeTime("too-few-ohms");
        few.press();
        few.clock.go();
        few.pass(0.2);

        Remark.Event aside =
                assertInstanceOf(Remark.Event.class, few.clock.remarkProperty().get());
        assertEquals(RunEvent.Kind.OVER_LIMIT, aside.event().kind());
        assertTrue(few.clock.goingProperty().get());
    }

    @Test
    void reset_afterAWhile_isTheStart() {
        clock.go();
        time.press();
        time.pass(5);
        time.release();
        clock.reset();

        assertEquals(Now.START, time.now());
        assertEquals(1, time.charge());
        assertEquals(0, time.coilW());
        assertTrue(clock.course().isEmpty());
    }
}
