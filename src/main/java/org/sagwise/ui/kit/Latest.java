package org.sagwise.ui.kit;

import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;

/** Works something out behind the scenes; only the answer to the last question is given. */
public final class Latest {

    private final Executor behindTheScenes;
    private volatile int asked;

    /**
     * @param behindTheScenes where it is worked out
     */
    public Latest(Executor behindTheScenes) {
        this.behindTheScenes = behindTheScenes;
    }

    /** Asks; the answer comes on the thread of the window. To be called there, too. */
    public <T> void ask(Supplier<T> question, Consumer<T> answer) {
        int mine = asked + 1;
        asked = mine;
        behindTheScenes.execute(() -> {
            if (mine == asked) {
                T found = question.get();
                Platform.runLater(() -> answerIfLast(mine, found, answer));
            }
        });
    }

    private <T> void answerIfLast(int mine, T found, Consumer<T> answer) {
        if (mine == asked) {
            answer.accept(found);
        }
    }
}
