package org.sagwise.ui.desk;

import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.application.Platform;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.sagwise.hazard.CautionTexts;
import org.sagwise.plan.vary.BuildSpread;
import org.sagwise.reading.Bench;
import org.sagwise.reading.NamedReading;
import org.sagwise.report.vary.VaryWords;
import org.sagwise.ui.kit.LatestTask;
import org.sagwise.ui.kit.WorkLine;
import org.sagwise.ui.kit.WrappedLabel;
import org.sagwise.ui.text.Wording;

/** What a reading becomes where parts are not as printed, in plain words; worked out behind the scenes. */
final class SpreadPane extends ScrollPane {

    private static final int MOST_RANKS = 8;
    private static final double MATTERS = 0.0005;

    private final Wording wording;
    private final LatestTask task;
    private final VBox answer = new VBox();
    private final ProgressBar progress = new ProgressBar(0);
    private final Label told = WrappedLabel.of("", "quiet");
    private final WorkLine line;
    private Optional<Object> asked = Optional.empty();

    /** What is asked of which bench. */
    private record Question(Object scenario, NamedReading reading) {}

    SpreadPane(Executor behindTheScenes, Wording wording) {
        this.wording = wording;
        this.task = LatestTask.in(behindTheScenes);
        setId("spread");
        setFitToWidth(true);
        getStyleClass().add("plain-scroll");
        line = new WorkLine("spread", task, told, wording);
        progress.visibleProperty().bind(task.stateProperty().isEqualTo(LatestTask.State.WORKING));
        progress.managedProperty().bind(progress.visibleProperty());
        progress.setId("spread-progress");
        progress.setAccessibleText(wording.say("vary.working"));
        answer.getStyleClass().addAll("column", "vary-answer");
        setContent(answer);
    }

    /** Stops whatever is under way. */
    void callOff() {
        task.callOff();
        asked = Optional.empty();
    }

    /** Works it out for a bench, unless that is what is shown or under way. */
    void ask(Bench bench, NamedReading reading, VaryWords words) {
        Question question = new Question(bench.scenario(), reading);
        if (asked.equals(Optional.of(question))) {
            return;
        }
        callOff();
        asked = Optional.of(question);
        progress.setProgress(0);
        told.setText(wording.say("vary.working"));
        answer.getChildren().setAll(told, new HBox(12, progress, line));
        task.ask(
                () -> BuildSpread.of(bench.scenario(), bench.catalogue(), reading, BuildSpread.USUAL_SAMPLES, share -> {
                    Platform.runLater(() -> progress.setProgress(share));
                    return true;
                }),
                found -> found.ifPresentOrElse(
                        spread -> show(spread, words),
                        () -> answer.getChildren().setAll(WrappedLabel.of(words.word("spread.nothing"), "words"))));
    }

    private void show(BuildSpread spread, VaryWords words) {
        answer.getChildren().clear();
        words.sentences(spread).forEach(text -> answer.getChildren().add(WrappedLabel.of(text, "words")));
        GridPane table = new GridPane();
        table.setId("spread-ranking");
        table.getStyleClass().add("measured-table");
        int row = 0;
        table.addRow(
                row++,
                WrappedLabel.of(words.word("spread.ranking"), "plot-title"),
                WrappedLabel.of(words.word("spread.printed"), "plot-title"),
                WrappedLabel.of(words.word("spread.off"), "plot-title"),
                WrappedLabel.of(words.word("spread.alone"), "plot-title"),
                WrappedLabel.of(words.word("spread.together"), "plot-title"));
        for (BuildSpread.Rank rank : spread.ranking().stream()
                .limit(MOST_RANKS)
                .filter(it -> it.total() > MATTERS)
                .toList()) {
            table.addRow(
                    row++,
                    WrappedLabel.of(words.name(rank.variable()), "words"),
                    WrappedLabel.of(rank.variable().print(rank.printed(), words.format()), "words"),
                    WrappedLabel.of(words.off(rank), "words"),
                    WrappedLabel.of(words.share(Math.max(0, rank.first())), "words"),
                    WrappedLabel.of(words.share(rank.total()), "words"));
        }
        if (row > 1) {
            answer.getChildren().add(table);
        }
        answer.getChildren().add(WrappedLabel.of(words.word("spread.odds"), "section-title"));
        if (spread.cautions().isEmpty()) {
            answer.getChildren().add(WrappedLabel.of(words.word("spread.odds.none", spread.judged()), "words"));
        }
        spread.cautions()
                .forEach(odds -> answer.getChildren()
                        .add(WrappedLabel.of(
                                CautionTexts.signal(odds.caution().signal(), wording.locale()) + "  "
                                        + words.odds(odds, spread.judged()),
                                "words")));
    }
}
