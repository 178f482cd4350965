package org.sagwise.fuzz;

import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.function.Supplier;

/**
 * Holds the program to its promise that nobody waits longer than two seconds, whatever a stranger
 * sends.
 *
 * <p>Counts the processor's time of this thread alone, so that a busy machine changes nothing, and
 * takes the quickest of a few goes, so that the first, which loads and compiles classes, does not
 * decide. What is slow is slow every time.
 */
final class Effort {

    /** Code that tells the fuzzer what it reaches runs some five times as slowly. */
    static final Duration MOST = Duration.ofSeconds(isCounted() ? 10 : 2);

    private static final int GOES = 4;

    private Effort() {}

    /**
     * Does it, and again only if it took too long.
     *
     * @return what came of it
     * @throws AssertionError if it takes longer than {@link #MOST} every time
     */
    static <T> T bounded(Supplier<T> task) {
        long quickest = Long.MAX_VALUE;
        for (int i = 0; i < GOES; i++) {
            long begin = cpuTimeNs();
            T done = task.get();
            quickest = Math.min(quickest, cpuTimeNs() - begin);
            if (quickest <= MOST.toNanos()) {
                return done;
            }
        }
        throw new AssertionError("takes " + quickest / 1_000_000 + " ms of the processor's time");
    }

    /** As the other one, where nothing comes of it. */
    static void bounded(Runnable task) {
        bounded(() -> {
            task.run();
            return true;
        });
    }

    /** Whether the fuzzer counts what is reached. */
    static boolean isCounted() {
        return System.getenv("JAZZER_FUZZ") != null;
    }

    private static long cpuTimeNs() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
