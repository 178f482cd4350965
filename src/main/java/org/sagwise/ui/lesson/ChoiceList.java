package org.sagwise.ui.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import javafx.scene.layout.VBox;
import org.sagwise.lesson.Answers;
import org.sagwise.lesson.Choice;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.lesson.Step;

/** The answers of a question, as large buttons. */
final class ChoiceList extends VBox {

    private final Step.Choose question;
    private final List<Integer> order;
    private final List<ChoiceButton> buttons = new ArrayList<>();

    ChoiceList(Step.Choose question, LessonPlayer now, LessonSession room, List<LiveText> live) {
        this.question = question;
        order = now.shuffle().order(question);
        getStyleClass().add("choices");
        for (int place : order) {
            Choice choice = question.choices().get(place);
            LiveText words = new LiveText(player -> player.say(choice.text()), now);
            live.add(words);
            ChoiceButton button = new ChoiceButton(buttons.size(), words);
            button.setOnAction(event -> room.choose(place));
            buttons.add(button);
        }
        getChildren().addAll(buttons);
        if (!now.answers().isOpen() || now.isAskingHowSure()) {
            show(now.answers());
        }
    }

    /** A prediction is only noted; a question at the end tells at once what is right. */
    private void show(Answers answers) {
        buttons.forEach(button -> button.setDisable(true));
        OptionalInt chosen = answers.choice();
        boolean tells = question.role() == Step.Role.CHECK;
        if (chosen.isPresent()) {
            buttons.get(order.indexOf(chosen.getAsInt()))
                    .mark(tells ? ChoiceButton.Mark.WRONG : ChoiceButton.Mark.CHOSEN);
        }
        if (tells) {
            buttons.get(order.indexOf(question.right())).mark(ChoiceButton.Mark.RIGHT);
        }
    }

    ChoiceButton first() {
        return buttons.get(0);
    }
}
