package org.sagwise.cli;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.sagwise.errand.Errand;

/**
 * How long a verb may compute. It is counted in processor time, so that a busy machine gets the same
 * answers as one at rest.
 */
final class Patience {

    static final Duration USUAL = Duration.ofNanos(Errand.USUAL_NS);

    private static final long LOOK_EVERY_MS = 100;

    /** Work asked for more processor time than it may have, and goes on in vain until the program ends. */
    static final class RunOut extends Exception {

        private static final long serialVersionUID = 1;
    }

    private Patience() {}

    /**
     * Does some work on a thread of its own, and waits for it.
     *
     * @param most processor time it may take
     * @throws RunOut if it takes more
     * @throws ExecutionException with what the work has thrown
     */
    static <T> T within(Duration most, Callable<T> work) throws RunOut, ExecutionException, InterruptedException {
        FutureTask<T> task = new FutureTask<>(work);
        Thread worker = new Thread(task, "verb");
        worker.setDaemon(true);
        worker.start();
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        while (true) {
            try {
                return task.get(LOOK_EVERY_MS, TimeUnit.MILLISECONDS);
            } catch (TimeoutException stillAtIt) {
                if (threads.getThreadCpuTime(worker.getId()) > most.toNanos()) {
                    throw new RunOut();
                }
            }
        }
    }
}
