package org.sagwise.ui.lesson.instructor;

import java.util.OptionalDouble;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.sagwise.lesson.Choice;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.lesson.ReadingRef;
import org.sagwise.lesson.Shuffle;
import org.sagwise.lesson.Step;
import org.sagwise.text.LocalText;
import org.sagwise.ui.kit.WrappedLabel;
import org.sagwise.ui.text.Markdown;
import org.sagwise.ui.text.Wording;

/** What only the instructor reads about a step: the notes, and what is right. */
final class StepNotes extends VBox {

    private final Wording wording;

    StepNotes(LessonPlayer now, Wording wording) {
        this.wording = wording;
        setId("instructor-notes");
        getStyleClass().add("instructor-notes");
        String kind = wording.say("lesson.kind." + now.step().kind());
        title(wording.say("instructor.step", now.at() + 1, kind));
        getChildren().add(Markdown.column(now.say(now.step().head().text())));
        key(now);
        title(wording.say("instructor.notes"));
        now.step().head().note().ifPresent(note -> note(note, now));
        note(now.lesson().note(), now);
    }

    private void key(LessonPlayer now) {
        Step step = now.step();
        if (step instanceof Step.Choose question) {
            Choice right = question.choices().get(question.right());
            int shown = now.shuffle().order(question).indexOf(question.right()) + 1;
            said("instructor.right", shown + ": " + now.say(right.text()));
            if (!now.shuffle().equals(Shuffle.NONE)) {
                said("instructor.right.sheet", String.valueOf(question.right() + 1));
            }
        } else if (step instanceof Step.Estimate estimate) {
            said("instructor.right", reading(estimate.expected(), now));
        } else if (step instanceof Step.Measure measure) {
            said("instructor.reading", reading(measure.reading(), now));
        } else if (step instanceof Step.Do task && !task.hints().isEmpty()) {
            LocalText plainest = task.hints().get(task.hints().size() - 1);
            said("instructor.way", now.say(plainest));
        }
    }

    private String reading(ReadingRef ref, LessonPlayer now) {
        OptionalDouble value = now.read(ref);
        return value.isPresent() ? wording.quantity(value.getAsDouble(), ref.unit()) : "–";
    }

    private void said(String key, String words) {
        Label label = WrappedLabel.of(wording.say(key, words), "lesson-done");
        label.setId("instructor-key");
        getChildren().add(label);
    }

    private void note(LocalText note, LessonPlayer now) {
        VBox card = Markdown.column(now.say(note));
        card.getStyleClass().add("lesson-hint");
        getChildren().add(card);
    }

    private void title(String words) {
        Label label = new Label(words);
        label.getStyleClass().add("section-title");
        getChildren().add(label);
    }
}
