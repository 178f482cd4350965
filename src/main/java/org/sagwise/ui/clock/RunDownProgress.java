package org.sagwise.ui.clock;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.sagwise.report.course.ClockTexts;
import org.sagwise.run.playback.Progress;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.Tip;

/** How far a run-down has come, and the button that calls it off. */
final class RunDownProgress extends HBox {

    private final ClockTexts texts;
    private final ProgressBar bar = new ProgressBar();
    private final Label words = new Label();

    RunDownProgress(ClockModel clock, ClockTexts texts, Subscriptions subscriptions) {
        this.texts = texts;
        setId("run-down-progress");
        getStyleClass().add("run-down-progress");
        setAlignment(Pos.CENTER_LEFT);
        bar.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(bar, Priority.ALWAYS);
        words.setMinWidth(0);
        Button stop = new Button(texts.word("run-down.stop"));
        stop.setId("run-down-stop");
        stop.setMinWidth(USE_PREF_SIZE);
        Tip.put(stop, texts.word("run-down.stop.tip"));
        stop.setOnAction(event -> clock.runDown().cancel());
        getChildren().addAll(words, bar, stop);
        subscriptions.watch(clock.runDown().progressProperty(), now -> now.ifPresent(this::show));
    }

    private void show(Progress progress) {
        words.setText(texts.word("run-down.progress", texts.time(progress.timeS()), progress.presses()));
        bar.setProgress(Double.isNaN(progress.share()) ? ProgressBar.INDETERMINATE_PROGRESS : progress.share());
        bar.setAccessibleText(words.getText());
    }
}
