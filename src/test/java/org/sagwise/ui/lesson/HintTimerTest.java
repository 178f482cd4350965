package org.sagwise.ui.lesson;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.sagwise.lesson.HintPace;

/** Hints and time, with time that passes only when the test says so. */
class HintTimerTest {

    private long nanos = 7;
    private final HintTimer patience = new HintTimer(() -> nanos);

    private void pass(double seconds) {
        nanos += Math.round(seconds * 1e9);
        patience.look();
    }

    private boolean mayHint() {
        return patience.mayHintProperty().get();
    }

    private boolean offers() {
        return patience.offersProperty().get();
    }

    @Test
    void firstHint_ofAStep_comesAtOnce() {
        assertTrue(mayHint());
    }

    @Test
    void nextHint_withNothingTried_waits() {
        patience.hinted();
        assertFalse(mayHint());
        pass(HintPace.BETWEEN_S - 1);
        assertFalse(mayHint());
        pass(1);
        assertTrue(mayHint());
    }

    @Test
    void nextHint_afterSomethingWasTried_comesAtOnce() {
        patience.hinted();
        patience.tried();
        assertTrue(mayHint());
    }

    @Test
    void nothingTried_forLong_isOfferedAHintOnce() {
        pass(HintPace.STUCK_S - 1);
        assertFalse(offers());
        pass(1);
        assertTrue(offers());

        patience.tried();
        assertFalse(offers());
        pass(10 * HintPace.STUCK_S);
        assertFalse(offers(), "once in a step is enough");

        patience.begin();
        pass(HintPace.STUCK_S);
        assertTrue(offers(), "another step may offer again");
    }

    @Test
    void trying_putsTheOfferOff() {
        pass(HintPace.STUCK_S - 1);
        patience.tried();
        pass(HintPace.STUCK_S - 1);
        assertFalse(offers());
    }
}
