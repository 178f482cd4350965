package org.sagwise.ui.lesson;

import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.TextArea;
import javafx.scene.layout.VBox;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.lesson.Step;
import org.sagwise.ui.text.Markdown;
import org.sagwise.ui.text.Wording;

/** A field for one's own words, a list to check them by, and one way to say it. What is written is not kept. */
final class WriteBody extends VBox {

    private static final int ROWS = 5;

    private final TextArea own = new TextArea();

    WriteBody(Step.Write step, LessonPlayer now, LessonSession room, Wording wording) {
        getStyleClass().add("choices");
        own.setId("lesson-own-words");
        own.setText(room.ownWords().getOrDefault(step.id(), ""));
        own.setWrapText(true);
        own.setPrefRowCount(ROWS);
        own.setAccessibleText(wording.say("lesson.write.field"));
        own.textProperty().subscribe(words -> room.ownWords().put(step.id(), words));
        getChildren().add(own);
        for (var point : step.points()) {
            CheckBox tick = new CheckBox(now.say(point));
            tick.setWrapText(true);
            getChildren().add(tick);
        }
        Button show = new Button(wording.say("lesson.write.model"));
        show.setId("lesson-model");
        show.getStyleClass().add("link-button");
        show.disableProperty().bind(own.textProperty().isEmpty());
        show.setOnAction(
                event -> getChildren().set(getChildren().indexOf(show), Markdown.column(now.say(step.model()))));
        getChildren().add(show);
    }

    TextArea field() {
        return own;
    }
}
