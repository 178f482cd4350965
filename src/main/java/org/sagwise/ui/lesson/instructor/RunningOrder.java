package org.sagwise.ui.lesson.instructor;

import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.sagwise.lesson.Lesson;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.lesson.Pacing;
import org.sagwise.lesson.Step;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.lesson.LessonSession;
import org.sagwise.ui.text.Wording;

/**
 * Evenings, lessons with their minutes, and the steps of the one that runs; each can be gone to.
 */
final class RunningOrder extends VBox {

    private static final PseudoClass PRESENT = PseudoClass.getPseudoClass("present");

    /** Widest note about a step, in pixels. */
    private final LessonSession room;

    private final Wording wording;

    RunningOrder(LessonSession room, Wording wording) {
        this.room = room;
        this.wording = wording;
        setId("running-order");
        getStyleClass().add("running-order");
    }

    /**
     * @param own lessons of one's own, which stand first
     */
    void show(List<Lesson> own, List<Lesson> lessons, Optional<LessonPlayer> now) {
        getChildren().clear();
        if (!own.isEmpty()) {
            title(wording.say("instructor.own"));
        }
        own.forEach(lesson -> entry(lesson, now));
        int evening = 0;
        for (Lesson lesson : lessons) {
            if (lesson.evening() != evening) {
                evening = lesson.evening();
                heading(evening, lessons);
            }
            entry(lesson, now);
        }
    }

    private void entry(Lesson lesson, Optional<LessonPlayer> now) {
        boolean runs = now.filter(it -> it.lesson().id().equals(lesson.id())).isPresent();
        lesson(lesson, runs);
        if (runs) {
            steps(now.orElseThrow());
        }
    }

    private void heading(int evening, List<Lesson> lessons) {
        int minutes = lessons.stream()
                .filter(it -> it.evening() == evening)
                .mapToInt(Lesson::minutes)
                .sum();
        double core = lessons.stream()
                .filter(it -> it.evening() == evening)
                .mapToDouble(it -> Pacing.minutes(it, true))
                .sum();
        title(wording.say("instructor.evening", evening, minutes));
        Label must = new Label(wording.say("instructor.core", Math.round(core)));
        must.setWrapText(true);
        must.getStyleClass().add("quiet");
        getChildren().add(must);
    }

    private void title(String words) {
        Label heading = new Label(words);
        heading.getStyleClass().add("section-title");
        getChildren().add(heading);
    }

    private void lesson(Lesson lesson, boolean runs) {
        String title = lesson.title().in(wording.locale());
        String key = lesson.core().isEmpty() ? "instructor.lesson.skip" : "instructor.lesson";
        Button button = button(wording.say(key, title, lesson.minutes()), runs);
        button.setId("instructor-lesson-" + lesson.id());
        button.setOnAction(event -> room.start(lesson));
    }

    private void steps(LessonPlayer now) {
        List<Step> steps = now.lesson().steps();
        for (int i = 0; i < steps.size(); i++) {
            int place = i;
            String kind = wording.say("lesson.kind." + steps.get(i).kind());
            String key = steps.get(i).head().skippable() ? "instructor.step.skip" : "instructor.step";
            Button button = button(wording.say(key, i + 1, kind), i == now.at());
            button.setId("instructor-step-" + (i + 1));
            button.getStyleClass().add("instructor-step");
            Step step = steps.get(i);
            Tip.put(button, () -> words(now, step));
            button.setOnAction(event -> room.jump(place));
        }
    }

    /** What the step says; readings are asked for only when somebody wants to know. */
    private static String words(LessonPlayer now, Step step) {
        return now.say(step.head().text()).replace("*", "").strip();
    }

    private Button button(String words, boolean present) {
        Button button = new Button(words);
        button.setMnemonicParsing(false);
        button.setWrapText(true);
        button.setAlignment(Pos.TOP_LEFT);
        button.setMaxWidth(Double.MAX_VALUE);
        button.getStyleClass().add("instructor-entry");
        button.pseudoClassStateChanged(PRESENT, present);
        getChildren().add(button);
        return button;
    }
}
