package org.sagwise.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Duration;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;

class PatienceTest {

    @Test
    void within_workThatEnds_givesItsOutcome() throws Exception {
        assertEquals(7, Patience.within(Patience.USUAL, () -> 7));
    }

    @Test
    void within_workWithoutEnd_isGivenUp() {
        AtomicBoolean enough = new AtomicBoolean();
        assertThrows(
                Patience.RunOut.class,
                () -> Patience.within(Duration.ofMillis(20), () -> {
                    int turns = 0;
                    while (!enough.get()) {
                        turns++;
                    }
                    return turns;
                }));
        enough.set(true);
    }

    @Test
    void within_workThatFails_tellsWhy() {
        ExecutionException failed = assertThrows(
                ExecutionException.class,
                () -> Patience.within(Patience.USUAL, () -> {
                    throw new OutOfMemoryError("planted");
                }));
        assertEquals("planted", failed.getCause().getMessage());
    }
}
