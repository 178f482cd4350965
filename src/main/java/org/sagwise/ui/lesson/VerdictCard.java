package org.sagwise.ui.lesson;

import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.sagwise.lesson.Verdict;
import org.sagwise.ui.kit.WrappedLabel;
import org.sagwise.ui.text.Markdown;
import org.sagwise.ui.text.Wording;

/** What the learner said beside what came out, and what there is to say about it. */
final class VerdictCard extends VBox {

    private final Verdict verdict;
    private final Wording wording;

    private VerdictCard(Verdict verdict, Wording wording) {
        this.verdict = verdict;
        this.wording = wording;
        getStyleClass().addAll("card", "verdict");
        if (verdict.said().isPresent()) {
            getStyleClass().add(verdict.met() ? "verdict-met" : "verdict-missed");
        }
    }

    /**
     * With the reply, in the step that answers the question.
     *
     * @param because the reason that the learner wrote
     */
    static VerdictCard answering(Verdict verdict, Optional<String> because, Wording wording) {
        VerdictCard card = new VerdictCard(verdict, wording);
        GridPane sides = card.sides();
        because.ifPresent(words -> row(sides, 2, wording.say("lesson.because"), words, ""));
        card.getChildren().add(sides);
        card.getChildren().add(Markdown.column(verdict.reply()));
        verdict.idea()
                .map(idea -> wording.say("lesson.idea", idea.sentence(wording.locale())))
                .ifPresent(idea -> card.getChildren().add(WrappedLabel.of(idea, "quiet")));
        card.sureness().map(wording::say).ifPresent(words -> {
            Label label = WrappedLabel.of(words, "quiet");
            label.setId("verdict-sure");
            card.getChildren().add(label);
        });
        return card;
    }

    /** What there is to say to who was sure and missed, or guessed and was right. */
    private Optional<String> sureness() {
        return verdict.isFirmMiss()
                ? Optional.of("lesson.sure.missed")
                : verdict.isLuck() ? Optional.of("lesson.sure.lucky") : Optional.empty();
    }

    /** With the question, in the summary. */
    static VerdictCard summing(Verdict verdict, Wording wording) {
        VerdictCard card = new VerdictCard(verdict, wording);
        card.getChildren().addAll(Markdown.column(verdict.question()), card.sides());
        return card;
    }

    private GridPane sides() {
        GridPane sides = new GridPane();
        sides.getStyleClass().add("verdict-sides");
        String said = verdict.said().orElseGet(() -> wording.say("lesson.said.nothing"));
        String mark = verdict.said().isEmpty() ? "–" : verdict.met() ? "✓" : "✗";
        row(sides, 0, wording.say("lesson.said"), said, mark);
        if (!verdict.met()) {
            row(sides, 1, wording.say("lesson.came-out"), verdict.right(), "");
        }
        return sides;
    }

    private static void row(GridPane sides, int row, String head, String words, String mark) {
        Label name = new Label(head);
        name.getStyleClass().add("quiet");
        name.setMinWidth(USE_PREF_SIZE);
        VBox text = Markdown.column(words);
        text.getStyleClass().add("verdict-words");
        GridPane.setHgrow(text, Priority.ALWAYS);
        Label sign = new Label(mark);
        sign.getStyleClass().add("verdict-mark");
        sign.setMinWidth(USE_PREF_SIZE);
        sides.addRow(row, sign, name, text);
    }
}
