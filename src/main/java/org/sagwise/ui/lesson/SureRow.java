package org.sagwise.ui.lesson;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.lesson.Sureness;
import org.sagwise.ui.kit.WrappedLabel;
import org.sagwise.ui.text.Wording;

/** Asks how sure one is of the answer just chosen. */
final class SureRow extends VBox {

    private final List<ChoiceButton> buttons = new ArrayList<>();

    SureRow(LessonPlayer now, LessonSession room, Wording wording) {
        setId("lesson-sure");
        getStyleClass().add("choices");
        Label asked = WrappedLabel.of(wording.say("lesson.how-sure"), "lesson-text");
        getChildren().add(asked);
        for (Sureness each : Sureness.values()) {
            String words = wording.say("lesson.how-sure." + each.word());
            ChoiceButton button = new ChoiceButton(buttons.size(), new LiveText(player -> words, now));
            button.setId("sure-" + (buttons.size() + 1));
            button.setOnAction(event -> room.sure(each));
            buttons.add(button);
        }
        getChildren().addAll(buttons);
    }

    ChoiceButton first() {
        return buttons.get(0);
    }
}
