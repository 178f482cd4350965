package org.sagwise.ui.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.RejectedExecutionException;
import org.junit.jupiter.api.Test;

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
}
