package org.sagwise.ui.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.sagwise.errand.Errand;

class LatestTaskTest {

    /** What is asked while the window closes is neither answered nor a failure that is told to anybody. */
    @Test
    void ask_threadBehindIsClosed_isDroppedWithoutAWord() {
        List<String> answers = new ArrayList<>();
        LatestTask task = new LatestTask(new Threads(
                work -> {
                    throw new RejectedExecutionException("closed");
                },
                Runnable::run));
        task.ask(() -> "answer", answers::add);
        assertEquals(List.of(), answers);
        assertFalse(task.isBusy());
    }

    @Test
    void ask_openThread_isAnsweredInFront() {
        List<String> answers = new ArrayList<>();
        LatestTask task = new LatestTask(new Threads(Runnable::run, Runnable::run));
        task.ask(() -> "answer", answers::add);
        assertEquals(List.of("answer"), answers);
    }

    /** Who asks again need not wait until what nobody wants any more has come to its end. */
    @Test
    void ask_again_endsTheQuestionBefore() {
        Deque<Runnable> behind = new ArrayDeque<>();
        List<String> answers = new ArrayList<>();
        LatestTask task = new LatestTask(new Threads(behind::add, Runnable::run));
        task.<String>ask(
                () -> {
                    task.ask(() -> "second", answers::add);
                    Errand.heed();
                    throw new AssertionError("goes on in vain");
                },
                answers::add);
        behind.remove().run();
        behind.remove().run();

        assertEquals(List.of("second"), answers);
        assertEquals(LatestTask.State.IDLE, task.stateProperty().get());
    }

    @Test
    void stop_whileWorking_givesNoAnswerAndCanBeAskedAgain() {
        Deque<Runnable> behind = new ArrayDeque<>();
        List<String> answers = new ArrayList<>();
        LatestTask task = new LatestTask(new Threads(behind::add, Runnable::run));
        task.ask(() -> "answer", answers::add);
        assertEquals(LatestTask.State.WORKING, task.stateProperty().get());
        task.stop();
        behind.remove().run();
        assertEquals(LatestTask.State.STOPPED, task.stateProperty().get());
        assertEquals(List.of(), answers);

        task.again();
        behind.remove().run();
        assertEquals(List.of("answer"), answers);
        assertEquals(LatestTask.State.IDLE, task.stateProperty().get());
    }

    @Test
    void ask_takesMoreThanItMay_isNoFailureOfTheProgram() {
        AtomicLong clock = new AtomicLong();
        LatestTask task =
                new LatestTask(new Threads(Runnable::run, Runnable::run), () -> new Errand(clock::get, 1_000));
        task.ask(
                () -> {
                    while (true) {
                        clock.incrementAndGet();
                        Errand.heed();
                    }
                },
                answer -> {});
        assertEquals(LatestTask.State.TOO_LONG, task.stateProperty().get());
    }

    @Test
    void ask_takesMoreMemoryThanThereIs_isNoFailureOfTheProgram() {
        LatestTask task = new LatestTask(new Threads(Runnable::run, Runnable::run));
        task.ask(
                () -> {
                    throw new OutOfMemoryError("planted");
                },
                answer -> {});
        assertEquals(LatestTask.State.TOO_LARGE, task.stateProperty().get());
    }
}
