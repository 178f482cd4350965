package org.sagwise.ui.lesson.instructor;

import java.util.Optional;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.lesson.LessonPace;
import org.sagwise.ui.lesson.LessonSession;
import org.sagwise.ui.text.Wording;

/** How much of a lesson's minutes has passed: for the instructor alone, and without an alarm. */
final class PaceBar extends VBox {

    private final LessonSession room;
    private final LessonPace pace;
    private final Wording wording;
    private final Label words = new Label();
    private final ProgressBar bar = new ProgressBar(0);

    PaceBar(LessonSession room, LessonPace pace, Wording wording, Subscriptions subscriptions) {
        this.room = room;
        this.pace = pace;
        this.wording = wording;
        setId("instructor-pace");
        getStyleClass().add("instructor-pace");
        words.setId("instructor-pace-words");
        words.setWrapText(true);
        words.setMinHeight(USE_PREF_SIZE);
        bar.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(bar, Priority.ALWAYS);
        Button anew = new Button(wording.say("instructor.pace.anew"));
        anew.setId("instructor-pace-anew");
        anew.setMinWidth(USE_PREF_SIZE);
        Tip.put(anew, wording.say("instructor.pace.anew.tip"));
        anew.setOnAction(event -> {
            pace.restart();
            show();
        });
        HBox line = new HBox(bar, anew);
        line.getStyleClass().add("tally-row");
        line.setAlignment(Pos.CENTER_LEFT);
        getChildren().addAll(words, line);
        Timeline beat = new Timeline(new KeyFrame(Duration.seconds(5), event -> show()));
        beat.setCycleCount(Animation.INDEFINITE);
        beat.play();
        subscriptions.add(beat::stop);
        subscriptions.watch(room.playerProperty(), now -> show());
    }

    private void show() {
        Optional<LessonPlayer> player = room.player();
        setVisible(player.isPresent());
        setManaged(player.isPresent());
        player.ifPresent(this::show);
    }

    private void show(LessonPlayer now) {
        int steps = now.lesson().steps().size();
        bar.setProgress(Math.min(1, pace.share()));
        words.setText(wording.say(
                "instructor.pace",
                (int) pace.minutes(),
                now.lesson().minutes(),
                now.at() + 1,
                steps,
                pace.stepByNow()));
    }
}
