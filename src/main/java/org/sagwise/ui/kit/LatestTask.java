package org.sagwise.ui.kit;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;

/**
 * Sends work behind the scenes, one piece at a time, and takes its outcome in front. Of pieces that
 * wait only the newest is kept, and the outcome of what was called off is dropped. A failure is told
 * in front, as any other failure of the window. All methods belong to the thread in front.
 */
public final class LatestTask {

    private final Threads threads;
    private Supplier<Runnable> waiting;
    private boolean busy;
    private int edition;

    public LatestTask(Threads threads) {
        this.threads = threads;
    }

    /** A task whose outcome comes on the thread of the window. */
    public static LatestTask in(Executor behind) {
        return new LatestTask(new Threads(behind, Platform::runLater));
    }

    public boolean isBusy() {
        return busy;
    }

    /** Whatever is under way or waits will not be heard of any more. */
    public void callOff() {
        edition++;
        waiting = null;
    }

    /** Asks a question; only the answer to the last one is given. */
    public <T> void ask(Supplier<T> question, Consumer<? super T> answer) {
        callOff();
        give(() -> {
            T found = question.get();
            return () -> answer.accept(found);
        });
    }

    /**
     * Has something done now, or after what is being done.
     *
     * @param work what to do behind the scenes; it gives what to do in front with its outcome
     */
    public void give(Supplier<Runnable> work) {
        if (busy) {
            waiting = work;
            return;
        }
        busy = true;
        int mine = edition;
        try {
            threads.behind().execute(() -> {
                var outcome = CompletableFuture.supplyAsync(work, Runnable::run);
                threads.front().execute(() -> take(mine, outcome));
            });
        } catch (RejectedExecutionException closed) {
            // The window is closing, and with it whoever asked: nobody waits for an answer any more.
            busy = false;
        }
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
