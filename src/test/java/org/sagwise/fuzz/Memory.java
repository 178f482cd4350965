package org.sagwise.fuzz;

import java.lang.management.ManagementFactory;

/**
 * Holds the program to its promise of 512 MB, whatever a stranger sends. Counts every byte that
 * this thread asks for, those let go of again included: so it can only be too strict.
 */
final class Memory {

    static final long MOST_BYTES = 512L * 1024 * 1024;

    private Memory() {}

    /**
     * Does it and looks how much memory it asked for.
     *
     * @throws AssertionError if it was more than {@link #MOST_BYTES}
     */
    static void bounded(Runnable task) {
        long before = allocatedBytes();
        task.run();
        long asked = allocatedBytes() - before;
        if (asked > MOST_BYTES) {
            throw new AssertionError("asks for " + asked / 1024 / 1024 + " MiB");
        }
    }

    private static long allocatedBytes() {
        return ((com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean())
                .getThreadAllocatedBytes(Thread.currentThread().getId());
    }
}
