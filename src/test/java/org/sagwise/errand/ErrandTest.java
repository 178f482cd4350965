package org.sagwise.errand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.fixture.Packs;
import org.sagwise.reading.Bench;
import org.sagwise.run.RunPlan;
import org.sagwise.run.RunSettings;
import org.sagwise.run.Runner;

class ErrandTest {

    private static final long ENOUGH = 1_000;

    private final AtomicLong clock = new AtomicLong();
    private final Errand errand = new Errand(clock::get, ENOUGH);

    @Test
    void run_nothingAgainstIt_givesItsOutcome() {
        assertEquals(7, errand.run(() -> {
            Errand.heed();
            return 7;
        }));
    }

    @Test
    void run_calledOffMeanwhile_endsWhereItAsks() {
        AtomicInteger done = new AtomicInteger();
        GivenUp end = assertThrows(
                GivenUp.class,
                () -> errand.run(() -> {
                    while (true) {
                        if (done.incrementAndGet() == 3) {
                            errand.callOff();
                        }
                        Errand.heed();
                    }
                }));
        assertEquals(3, done.get());
        assertFalse(end.isSpent());
    }

    @Test
    void run_calledOffBefore_isNotBegun() {
        AtomicInteger done = new AtomicInteger();
        errand.callOff();
        assertThrows(GivenUp.class, () -> errand.run(done::incrementAndGet));
        assertEquals(0, done.get());
    }

    @Test
    void run_takesMoreThanItMay_isGivenUp() {
        GivenUp end = assertThrows(
                GivenUp.class,
                () -> errand.run(() -> {
                    while (true) {
                        clock.incrementAndGet();
                        Errand.heed();
                    }
                }));
        assertTrue(end.isSpent());
    }

    /** What follows on the same thread is nobody's errand any more. */
    @Test
    void heed_afterOneThatWasCalledOff_doesNothing() {
        errand.callOff();
        assertThrows(GivenUp.class, () -> errand.run(() -> 7));
        Errand.heed();
    }

    /** A run that nobody wants any more ends in the middle, not at its end. */
    @Test
    void heed_whileABenchIsRunDown_endsTheRun() {
        Bench bench = Bench.of(Packs.of(2, 1), CatalogueLoader.builtIn());
        AtomicInteger presses = new AtomicInteger();
        assertThrows(
                GivenUp.class,
                () -> errand.run(() -> Runner.run(bench, RunPlan.USUAL, RunSettings.USUAL, state -> {
                    if (presses.incrementAndGet() == 2) {
                        errand.callOff();
                    }
                    return true;
                })));
        assertEquals(2, presses.get());
    }
}
