package org.sagwise.ui.lesson;

import java.util.function.Function;
import javafx.scene.layout.VBox;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.ui.text.Markdown;

/** A text with readings in it that are always those of the bench as it is now. */
final class LiveText extends VBox {

    private final Function<LessonPlayer, String> words;
    private String said = "";

    LiveText(Function<LessonPlayer, String> words, LessonPlayer now) {
        this.words = words;
        refresh(now);
    }

    void refresh(LessonPlayer now) {
        String next = words.apply(now);
        if (!next.equals(said)) {
            said = next;
            getChildren().setAll(Markdown.column(next));
        }
    }

    String said() {
        return said;
    }
}
