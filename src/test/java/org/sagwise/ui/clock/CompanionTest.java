package org.sagwise.ui.clock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.sagwise.lesson.Lesson;
import org.sagwise.lesson.LessonFixture;
import org.sagwise.run.RunPlan;
import org.sagwise.run.RunResult;
import org.sagwise.run.Runner;
import org.sagwise.run.playback.Ending;
import org.sagwise.run.playback.Speed;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;

/** Two benches on one clock: the pair of the lesson on equal watts, all parts of it ideal. */
class CompanionTest {

    private static final Lesson LESSON = LessonFixture.builtIn("06-same-watts");

    private final FakeTime time = new FakeTime(bench("side"));
    private final ClockModel clock = time.clock;
    private final Companion companion = new Companion(clock, time.bench, time.threads(), FakeTime::assess);

    private static Scenario bench(String name) {
        return LESSON.scenarios(Locale.ENGLISH).get(name);
    }

    private Companion.Seen seen() {
        return companion.seenProperty().get().orElseThrow();
    }

    private double besideCharge() {
        return seen().assessment().states().cells().get("A").charge();
    }

    private double besideW() {
        return seen().assessment().readings().coils().get(0).powerW();
    }

    @Test
    void button_beforeTimeBegins_goesDownOnBoth() {
        companion.accompany(Optional.of(bench("row")));
        assertEquals(0, besideW(), 1e-9);

        time.press();
        assertEquals(time.coilW(), besideW(), 1e-6);
        assertEquals(1, besideCharge());
    }

    @Test
    void presses_ofTheFirst_emptyBothAlike() {
        companion.accompany(Optional.of(bench("row")));
        clock.setSpeed(Speed.SIXTY);
        clock.go();
        for (int i = 0; i < 3; i++) {
            time.press();
            time.pass(1.3);
            time.release();
            time.pass(0.7);
        }

        assertEquals(Press.RELEASED, time.now().press());
        assertTrue(time.charge() < 0.97, "charge " + time.charge());
        assertEquals(time.charge(), besideCharge(), 1e-9);
        assertEquals(seen().firstFiredS(), seen().firedS(), 1e-6);
        assertEquals(0, besideW(), 1e-9);
    }

    @Test
    void onePieceOfWork_whileTimePasses_movesBothToTheSameMoment() {
        companion.accompany(Optional.of(bench("row")));
        clock.setSpeed(Speed.SIXTY);
        clock.go();
        time.press();
        time.pass(0.5);
        double before = besideCharge();

        time.slowDown();
        time.pass(0.1);
        time.catchUpByOne();

        assertTrue(besideCharge() < before, "charge " + besideCharge());
        assertEquals(time.charge(), besideCharge(), 1e-9);
        time.catchUp();
    }

    @Test
    void momentTurnedBackTo_isThatOfBoth() {
        companion.accompany(Optional.of(bench("row")));
        clock.setSpeed(Speed.SIX_HUNDRED);
        clock.go();
        time.press();
        time.pass(2);
        clock.turnTo(300);

        assertEquals(time.charge(), besideCharge(), 1e-9);
        assertEquals(300, seen().firedS(), 1e-6);
    }

    @Test
    void goingOnFromAnEarlierMoment_forgetsWhatCameAfter() {
        companion.accompany(Optional.of(bench("row")));
        clock.setSpeed(Speed.SIX_HUNDRED);
        clock.go();
        time.press();
        time.pass(2);
        clock.turnTo(300);
        time.release();
        clock.go();
        time.pass(1);

        assertEquals(300, seen().firedS(), 1e-6);
        assertEquals(time.charge(), besideCharge(), 1e-9);
    }

    /** What a run of each by itself says is what is seen when both go on one clock. */
    @Test
    void idealPair_heldToTheEnd_endsTogether() {
        companion.accompany(Optional.of(bench("row")));
        clock.setSpeed(Speed.SIX_HUNDRED);
        time.press();
        clock.go();
        time.pass(12);

        assertFalse(clock.goingProperty().get());
        Ending here = companion.firstEndingProperty().get().orElseThrow();
        Ending beside = seen().ending().orElseThrow();
        RunResult alone = Runner.run(FakeTime.assess(bench("row")).bench(), RunPlan.held());
        assertEquals(here.timeS(), beside.timeS(), 1e-6 * here.timeS());
        assertEquals(here.firedS(), beside.firedS(), 1e-6 * here.firedS());
        assertEquals(alone.last().timeS(), beside.timeS(), 1e-3 * here.timeS());
        assertEquals(time.charge(), besideCharge(), 1e-6);
    }

    @Test
    void idealPair_runDownByPresses_endsTogether() {
        companion.accompany(Optional.of(bench("row")));
        clock.startRunDown();

        Ending here = companion.firstEndingProperty().get().orElseThrow();
        Ending beside = seen().ending().orElseThrow();
        assertTrue(here.timeS() > 10 * here.firedS() - 60, "a rest of 27 s after each press of 3");
        assertEquals(here.timeS(), beside.timeS(), 1e-6 * here.timeS());
        assertEquals(here.firedS(), beside.firedS(), 1e-6 * here.firedS());
    }

    /** Three side by side last longer than two in a row with the same watts; the clock waits. */
    @Test
    void secondAtItsEndFirst_stopsTheClockThere() {
        FakeTime three = new FakeTime(bench("three-side"));
        Companion shorter = new Companion(three.clock, three.bench, three.threads(), FakeTime::assess);
        shorter.accompany(Optional.of(bench("row")));
        three.clock.setSpeed(Speed.SIX_HUNDRED);
        three.press();
        three.clock.go();
        three.pass(14);

        Ending beside = shorter.seenProperty().get().orElseThrow().ending().orElseThrow();
        Ending here = shorter.firstEndingProperty().get().orElseThrow();
        assertFalse(three.clock.goingProperty().get());
        assertEquals(beside.timeS(), three.now().timeS(), 1e-6);
        assertEquals(1.5, here.timeS() / beside.timeS(), 0.02);
        assertTrue(three.charge() > 0.3, "charge " + three.charge());
    }

    @Test
    void firstAtItsEndFirst_saysHowLongTheOtherGoesOn() {
        companion.accompany(Optional.of(bench("three-side")));
        clock.setSpeed(Speed.SIX_HUNDRED);
        time.press();
        clock.go();
        time.pass(14);

        Ending here = companion.firstEndingProperty().get().orElseThrow();
        Ending beside = seen().ending().orElseThrow();
        assertEquals(1.5, beside.timeS() / here.timeS(), 0.02);
        assertTrue(besideCharge() > 0.3, "charge " + besideCharge());
    }

    @Test
    void circuitChanged_putsBothBackToTheStart() {
        companion.accompany(Optional.of(bench("row")));
        clock.setSpeed(Speed.SIX_HUNDRED);
        time.press();
        clock.go();
        time.pass(2);
        time.bench.edit("other coil", s -> s.withPart("coil", coil -> coil.with("ohm", 2)));

        assertEquals(1, besideCharge());
        assertEquals(Optional.empty(), companion.firstEndingProperty().get());
    }
}
