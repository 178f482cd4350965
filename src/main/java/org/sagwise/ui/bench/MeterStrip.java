package org.sagwise.ui.bench;

import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.sagwise.reading.MeterDisplay;
import org.sagwise.reading.MeterTexts;
import org.sagwise.reading.ProbeReading;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.kit.Commands;
import org.sagwise.ui.kit.Controls;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.text.Wording;

/** What the meter in the hand means by what it shows, or why it refuses; there only if needed. */
public final class MeterStrip extends HBox {

    private final BenchModel bench;
    private final MeterTexts texts;
    private final Label words = new Label();
    private final Button inLine;

    public MeterStrip(
            BenchModel bench, Commands commands, Controls controls, Wording wording, Subscriptions subscriptions) {
        this.bench = bench;
        this.texts = MeterTexts.in(wording.locale());
        setId("meter-strip");
        getStyleClass().add("meter-strip");
        words.setId("meter-words");
        words.setWrapText(true);
        words.setMaxWidth(Double.MAX_VALUE);
        words.setMinHeight(USE_PREF_SIZE);
        setMinHeight(USE_PREF_SIZE);
        setHgrow(words, Priority.ALWAYS);
        inLine = controls.button(commands.get("meter-in-line"));
        inLine.setMinWidth(Button.USE_PREF_SIZE);
        getChildren().addAll(words, inLine);
        subscriptions.watch(bench.assessmentProperty(), now -> follow());
    }

    private void follow() {
        Optional<MeterDisplay> display = bench.assessment().readings().probes().map(ProbeReading::display);
        String sentence =
                display.map(it -> texts.sentence(it, bench.scenario())).orElse("");
        words.setText(sentence);
        boolean offers = display.filter(it ->
                        it instanceof MeterDisplay.Amps amps && amps.joint().isPresent())
                .isPresent();
        inLine.setVisible(offers);
        inLine.setManaged(offers);
        setVisible(!sentence.isEmpty());
        setManaged(!sentence.isEmpty());
    }
}
