package org.sagwise.ui.clock;

import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;

/**
 * Sends work behind the scenes, one piece at a time, and takes its outcome in front. Of pieces that
 * wait only the newest is kept, and the outcome of what was called off is dropped.
 */
final class Desk {

    private final Threads threads;
    private Supplier<Runnable> waiting;
    private boolean busy;
    private int edition;

    Desk(Threads threads) {
        this.threads = threads;
    }

    boolean isBusy() {
        return busy;
    }

    /** Whatever is under way or waits will not be heard of any more. */
    void callOff() {
        edition++;
        waiting = null;
    }

    /**
     * Has something done now, or after what is being done.
     *
     * @param work what to do behind the scenes; it gives what to do in front with its outcome
     */
    void give(Supplier<Runnable> work) {
        if (busy) {
            waiting = work;
            return;
        }
        busy = true;
        int mine = edition;
        threads.behind().execute(() -> {
            // A failure is told in front, as any other failure of the window.
            var outcome = CompletableFuture.supplyAsync(work, Runnable::run);
            threads.front().execute(() -> take(mine, outcome));
        });
    }

    private void take(int given, CompletableFuture<Runnable> outcome) {
        busy = false;
        Supplier<Runnable> next = waiting;
        waiting = null;
        if (next != null) {
            give(next);
        }
        if (given == edition) {
            outcome.join().run();
        }
    }
}
