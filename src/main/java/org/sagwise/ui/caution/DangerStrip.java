package org.sagwise.ui.caution;

import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

import org.sagwise.caution.Assessment;
import org.sagwise.caution.Caution;
import org.sagwise.caution.CautionTexts;
import org.sagwise.caution.Signal;
import org.sagwise.ui.model.BenchModel;
import org.sagwise.ui.model.Subscriptions;
import org.sagwise.ui.text.Wording;

import java.util.List;
import java.util.function.Consumer;

/** A strip across the window for a circuit that would hurt whoever built it. */
public final class DangerStrip extends HBox {

    private final Wording wording;
    private final Label title = new Label();
    private final Label advice = new Label();
    private final Label more = new Label();
    private final Button showButton;

    /**
     * @param show picks a caution out on the bench
     */
    public DangerStrip(
            BenchModel bench,
            Consumer<Caution> show,
            Wording wording,
            Subscriptions subscriptions) {
        this.wording = wording;
        setId("danger-strip");
        getStyleClass().add("danger-strip");
        setAlignment(Pos.CENTER_LEFT);
        String word = CautionTexts.signal(Signal.DANGER, wording.locale());
        Label signal = new Label(word);
        signal.getStyleClass().add("danger-word");
        signal.setMinWidth(USE_PREF_SIZE);
        title.setId("danger-title");
        title.getStyleClass().add("danger-title");
        title.setWrapText(true);
        advice.setWrapText(true);
        VBox words = new VBox(title, advice);
        words.setMinWidth(0);
        HBox.setHgrow(words, Priority.ALWAYS);
        more.setMinWidth(USE_PREF_SIZE);
        showButton = new Button(wording.say("caution.show"));
        showButton.setTooltip(new Tooltip(wording.say("caution.show.tip")));
        showButton.setMinWidth(USE_PREF_SIZE);
        setAccessibleRole(AccessibleRole.TEXT);
        getChildren().addAll(new Flag(Signal.DANGER, word), signal, words, more, showButton);
        subscriptions.watch(bench.assessmentProperty(), now -> show(dangers(now), show));
    }

    private void show(List<Caution> dangers, Consumer<Caution> show) {
        setVisible(!dangers.isEmpty());
        setManaged(!dangers.isEmpty());
        if (dangers.isEmpty()) {
            return;
        }
        Caution first = dangers.get(0);
        title.setText(
                wording.say(
                        "danger.as-built",
                        CautionTexts.title(first, wording.locale()),
                        CautionNumbers.of(first, wording).orElse("")));
        advice.setText(wording.say("caution.do", CautionTexts.advice(first, wording.locale())));
        more.setText(dangers.size() > 1 ? wording.say("danger.more", dangers.size() - 1) : "");
        showButton.setOnAction(event -> show.accept(first));
        setAccessibleText(
                CautionTexts.signal(Signal.DANGER, wording.locale())
                        + ". "
                        + title.getText()
                        + " "
                        + advice.getText());
    }

    private static List<Caution> dangers(Assessment assessment) {
        return assessment.cautions().stream()
                .filter(caution -> caution.signal() == Signal.DANGER)
                .toList();
    }
}
