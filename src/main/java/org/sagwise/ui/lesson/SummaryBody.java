package org.sagwise.ui.lesson;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.lesson.Verdict;
import org.sagwise.ui.kit.WrappedLabel;
import org.sagwise.ui.text.Wording;

/** What the learner said in the whole lesson, beside what came out. */
final class SummaryBody extends VBox {

    SummaryBody(LessonPlayer now, Wording wording) {
        setId("lesson-summary");
        getStyleClass().add("lesson-step");
        Label heading = new Label(wording.say("lesson.summary"));
        heading.getStyleClass().addAll("lesson-kind", "lesson-kind-say");
        List<Verdict> all = now.summary();
        long answered = all.stream().filter(it -> it.said().isPresent()).count();
        long met = all.stream().filter(Verdict::met).count();
        long open = all.size() - answered;
        String words = wording.say("lesson.summary.count", met, answered);
        Label count = WrappedLabel.of(
                open == 0 ? words : words + " " + wording.say("lesson.summary.open", open), "lesson-text");
        count.setId("lesson-summary-count");
        long sure = all.stream().filter(Verdict::isSure).count();
        if (sure > 0) {
            long right = all.stream().filter(it -> it.isSure() && it.met()).count();
            count.setText(count.getText() + " " + wording.say("lesson.summary.sure", sure, right));
        }
        Label meaning = WrappedLabel.of(wording.say("lesson.summary.meaning"), "quiet");
        Label goal =
                new Label(wording.say("lesson.summary.goal", now.lesson().goal().in(wording.locale())));
        goal.setId("lesson-summary-goal");
        goal.setWrapText(true);
        goal.setMinHeight(USE_PREF_SIZE);
        goal.getStyleClass().add("lesson-text");
        getChildren().addAll(heading, count, meaning, goal);
        all.forEach(it -> getChildren().add(VerdictCard.summing(it, wording)));
    }
}
