package org.sagwise.ui.bench;

import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;

import org.sagwise.ui.model.BenchModel;
import org.sagwise.ui.model.Lit;
import org.sagwise.ui.model.Subscriptions;
import org.sagwise.ui.text.PartTexts;
import org.sagwise.ui.text.Wording;

/** One line under the bench that says what is picked out and what could be measured there. */
public final class StatusLine extends Label {

    private final BenchModel bench;
    private final Wording wording;
    private final PartTexts texts;

    public StatusLine(BenchModel bench, Wording wording, Subscriptions subscriptions) {
        this.bench = bench;
        this.wording = wording;
        this.texts = new PartTexts(wording);
        setId("status-line");
        getStyleClass().add("status-line");
        setMaxWidth(Double.MAX_VALUE);
        setMinWidth(0);
        setTooltip(new Tooltip());
        getTooltip().textProperty().bind(textProperty());
        subscriptions.onChange(bench.assessmentProperty(), this::tell);
        subscriptions.watch(bench.spotlight().litProperty(), lit -> tell());
    }

    private void tell() {
        Lit lit = bench.spotlight().lit();
        setText(
                lit.isNothing()
                        ? wording.say("status.hint")
                        : String.join("   ", texts.lit(bench.assessment(), lit)));
    }
}
