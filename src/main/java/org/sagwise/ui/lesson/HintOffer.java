package org.sagwise.ui.lesson;

import java.util.Optional;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.util.Duration;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.text.Wording;

/** Tells somebody who has tried nothing for long that there is a hint. */
final class HintOffer extends Label {

    private final LessonSession room;

    HintOffer(LessonSession room, Wording wording, Subscriptions subscriptions) {
        this.room = room;
        setId("lesson-offer");
        setText(wording.say("lesson.offer"));
        setWrapText(true);
        setMinHeight(USE_PREF_SIZE);
        getStyleClass().add("lesson-hint");
        setAccessibleRole(AccessibleRole.TEXT);
        Timeline beat = new Timeline(
                new KeyFrame(Duration.seconds(1), event -> room.patience().look()));
        beat.setCycleCount(Animation.INDEFINITE);
        subscriptions.add(beat::stop);
        subscriptions.watch(room.playerProperty(), now -> follow(now, beat));
        subscriptions.onChange(room.patience().offersProperty(), this::show);
    }

    private void follow(Optional<LessonPlayer> now, Timeline beat) {
        if (now.isPresent()) {
            beat.play();
        } else {
            beat.stop();
        }
        show();
    }

    private void show() {
        boolean wanted = room.patience().offersProperty().get()
                && !room.atSummary()
                && room.player().filter(HintOffer::hasHints).isPresent();
        setVisible(wanted);
        setManaged(wanted);
    }

    private static boolean hasHints(LessonPlayer now) {
        return now.answers().isOpen() && now.hasMoreHints();
    }
}
