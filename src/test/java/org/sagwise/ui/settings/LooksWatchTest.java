package org.sagwise.ui.settings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class LooksWatchTest {

    private static final long SECOND = 1_000_000_000L;

    private final AtomicLong now = new AtomicLong();
    private final AtomicInteger asked = new AtomicInteger();
    private final AtomicInteger found = new AtomicInteger();
    private final LooksWatch watch = new LooksWatch(
            () -> {
                asked.incrementAndGet();
                return SystemLooks.UNKNOWN;
            },
            Runnable::run,
            looks -> found.incrementAndGet(),
            now::get);

    @Test
    void look_againAndAgainWithinSeconds_asksTheSystemOnce() {
        now.set(20 * SECOND);
        for (int i = 0; i < 9; i++) {
            watch.look();
            now.addAndGet(SECOND);
        }
        assertEquals(1, asked.get());
        assertEquals(1, found.get());
    }

    @Test
    void look_muchLater_asksAnew() {
        watch.look();
        assertEquals(0, asked.get());
        now.set(20 * SECOND);
        watch.look();
        now.set(40 * SECOND);
        watch.look();
        assertEquals(2, asked.get());
    }
}
