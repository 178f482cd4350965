package org.sagwise.ui.lesson;

import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.ui.text.Wording;

/** A line for one's own reason. Nobody has to write one, and what is written is not kept. */
final class WhyField extends VBox {

    private final TextField own = new TextField();

    /**
     * @param agreed what follows when one has written
     */
    WhyField(LessonPlayer now, LessonSession room, Wording wording, Runnable agreed) {
        getStyleClass().add("choices");
        Label because = new Label(wording.say("lesson.because"));
        because.getStyleClass().add("quiet");
        because.setLabelFor(own);
        own.setId("lesson-because");
        own.setText(room.ownWords().getOrDefault(now.step().id(), ""));
        own.setPromptText(wording.say("lesson.because.prompt"));
        own.setAccessibleText(wording.say("lesson.because") + " " + wording.say("lesson.because.prompt"));
        own.textProperty().subscribe(words -> room.ownWords().put(now.step().id(), words));
        own.setOnAction(event -> agreed.run());
        getChildren().addAll(because, own);
    }

    TextField field() {
        return own;
    }
}
