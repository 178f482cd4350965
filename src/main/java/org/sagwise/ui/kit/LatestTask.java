package org.sagwise.ui.kit;

import java.lang.management.ManagementFactory;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.sagwise.errand.Errand;
import org.sagwise.errand.GivenUp;

/**
 * Sends work behind the scenes, one piece at a time, and takes its outcome in front. Of pieces that
 * wait only the newest is kept, and the outcome of what was called off is dropped. A failure is told
 * in front, as any other failure of the window. All methods belong to the thread in front.
 *
 * <p>A question that is called off ends where it stands, so that what is asked next need not wait for an answer that
 * nobody wants; and it may take as much processor time as a verb of the command line, no more.
 */
public final class LatestTask {

    /** What has become of the question that was asked last. */
    public enum State {
        /** Nothing was asked, or it is answered. */
        IDLE,
        WORKING,
        /** Somebody no longer wanted to wait. */
        STOPPED,
        /** It took more processor time than it may. */
        TOO_LONG,
        /** It took more memory than there is. */
        TOO_LARGE
    }

    private final Threads threads;
    private final Supplier<Errand> errands;
    private final ReadOnlyObjectWrapper<State> state = new ReadOnlyObjectWrapper<>(State.IDLE);
    private Errand errand;
    private Runnable again = () -> {};
    private Supplier<Runnable> waiting;
    private boolean busy;
    private int edition;

    public LatestTask(Threads threads) {
        this(threads, LatestTask::errand);
    }

    /**
     * @param errands how much each question may take
     */
    LatestTask(Threads threads, Supplier<Errand> errands) {
        this.threads = threads;
        this.errands = errands;
        errand = errands.get();
    }

    /** A task whose outcome comes on the thread of the window. */
    public static LatestTask in(Executor behind) {
        return new LatestTask(new Threads(behind, Platform::runLater));
    }

    private static Errand errand() {
        return new Errand(ManagementFactory.getThreadMXBean()::getCurrentThreadCpuTime, Errand.USUAL_NS);
    }

    public boolean isBusy() {
        return busy;
    }

    /** What has become of the question that was asked last. */
    public ReadOnlyObjectProperty<State> stateProperty() {
        return state.getReadOnlyProperty();
    }

    /** Whatever is under way or waits will not be heard of any more. */
    public void callOff() {
        drop();
        state.set(State.IDLE);
    }

    /** Calls the question off, and says so. */
    public void stop() {
        drop();
        state.set(State.STOPPED);
    }

    /** Asks the last question once more. */
    public void again() {
        again.run();
    }

    private void drop() {
        edition++;
        waiting = null;
        errand.callOff();
    }

    /** Asks a question; only the answer to the last one is given. */
    public <T> void ask(Supplier<T> question, Consumer<? super T> answer) {
        drop();
        again = () -> ask(question, answer);
        Errand mine = errands.get();
        errand = mine;
        state.set(State.WORKING);
        give(() -> {
            T found = mine.run(question);
            return () -> {
                state.set(State.IDLE);
                answer.accept(found);
            };
        });
    }

    /**
     * Has something done now, or after what is being done. It cannot be ended midway.
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
            joined(outcome).run();
        }
    }

    /** What to do with an outcome: a question that took too much is no failure of the program. */
    private Runnable joined(CompletableFuture<Runnable> outcome) {
        try {
            return outcome.join();
        } catch (CompletionException failed) {
            if (failed.getCause() instanceof GivenUp) {
                return () -> state.set(State.TOO_LONG);
            }
            if (failed.getCause() instanceof OutOfMemoryError) {
                return () -> state.set(State.TOO_LARGE);
            }
            state.set(State.IDLE);
            throw failed;
        }
    }
}
