package org.sagwise.ui.lesson;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.sagwise.lesson.Idea;
import org.sagwise.lesson.Lesson;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.lesson.Recall;
import org.sagwise.lesson.RecallRound;
import org.sagwise.ui.kit.WrappedLabel;
import org.sagwise.ui.text.Markdown;
import org.sagwise.ui.text.Wording;

/** A question of an earlier lesson, before another one begins. */
final class RecallBody extends VBox {

    private Optional<Node> first = Optional.empty();

    RecallBody(RecallRound round, LessonPlayer now, LessonSession room, List<Lesson> taught, Wording wording) {
        setId("lesson-recall");
        getStyleClass().add("lesson-step");
        RecallRound.Asked asked = round.question();
        Label kind = new Label(wording.say("lesson.recall"));
        kind.setId("lesson-kind");
        kind.getStyleClass().addAll("lesson-kind", "lesson-kind-check");
        Label from = WrappedLabel.of(
                wording.say("lesson.recall.from", asked.item().lesson().title().in(wording.locale())), "quiet");
        VBox text = Markdown.column(asked.text());
        text.setId("lesson-text");
        text.getStyleClass().add("lesson-text");
        VBox choices = new VBox();
        choices.getStyleClass().add("choices");
        getChildren().addAll(kind, from, text, choices);
        for (int i = 0; i < asked.options().size(); i++) {
            String words = asked.options().get(i);
            ChoiceButton button = new ChoiceButton(i, new LiveText(player -> words, now));
            int place = i;
            button.setOnAction(event -> room.choose(place));
            choices.getChildren().add(button);
            if (round.chosen().isPresent()) {
                button.setDisable(true);
                mark(button, place, round);
            }
        }
        if (round.chosen().isPresent()) {
            told(round, room, taught, wording);
        } else {
            first = Optional.of(choices.getChildren().get(0));
        }
    }

    /** Where the keyboard goes; empty once it is answered. */
    Optional<Node> first() {
        return first;
    }

    private static void mark(ChoiceButton button, int place, RecallRound round) {
        if (place == round.question().right()) {
            button.mark(ChoiceButton.Mark.RIGHT);
        } else if (place == round.chosen().getAsInt()) {
            button.mark(ChoiceButton.Mark.WRONG);
        }
    }

    private void told(RecallRound round, LessonSession room, List<Lesson> taught, Wording wording) {
        int chosen = round.chosen().getAsInt();
        VBox reply = Markdown.column(round.question().replies().get(chosen));
        reply.setId("lesson-status");
        reply.getStyleClass().add(round.isMet() ? "lesson-done" : "lesson-note");
        getChildren().add(reply);
        Optional<Idea> idea = round.question().ideas().get(chosen);
        idea.flatMap(it -> Recall.shownAt(it, taught)).ifPresent(shown -> {
            Button show = new Button(
                    wording.say("lesson.recall.show", shown.lesson().title().in(wording.locale())));
            show.setId("lesson-recall-show");
            show.getStyleClass().add("link-button");
            show.setWrapText(true);
            show.setOnAction(event -> room.show(shown));
            getChildren().add(show);
        });
    }
}
