package org.sagwise.ui.share;

import java.util.Locale;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.sagwise.plan.Estimate;
import org.sagwise.plan.Measured;
import org.sagwise.quantity.Unit;
import org.sagwise.text.Texts;
import org.sagwise.ui.kit.WrappedLabel;
import org.sagwise.ui.text.Wording;

/** What follows from readings, how well it is known, and what would make it better known. */
final class MeasuredResult extends VBox {

    private final Wording wording;

    MeasuredResult(Wording wording) {
        this.wording = wording;
        setId("measured-result");
        getStyleClass().add("measured-result");
    }

    /** Says why there is nothing to show yet. */
    void wait(String key) {
        getChildren().setAll(title(), WrappedLabel.of(wording.say(key), "quiet"));
    }

    /**
     * @param isCellAssumed whether limit or capacity are those of a usual cell
     */
    void show(Measured measured, boolean isCellAssumed) {
        GridPane table = new GridPane();
        table.getStyleClass().add("measured-table");
        row(table, "measured.sag", wording.quantity(measured.sagV(), Unit.VOLT), "");
        row(table, "measured.drop", wording.quantity(measured.dropV(), Unit.VOLT), "");
        estimate(table, "measured.current", measured.currentA(), Unit.AMPERE);
        row(table, "measured.power", wording.quantity(measured.powerW(), Unit.WATT), "");
        estimate(table, "measured.internal", measured.internalOhm(), Unit.OHM);
        estimate(table, "measured.path", measured.pathOhm(), Unit.OHM);
        String advice = measured.advice().name().toLowerCase(Locale.ROOT).replace('_', '-');
        getChildren()
                .setAll(
                        title(),
                        table,
                        WrappedLabel.of(
                                wording.say(
                                        "measured.spread",
                                        wording.quantity(measured.check().voltsStep(), Unit.VOLT),
                                        wording.quantity(measured.check().ohmStep(), Unit.OHM)),
                                "quiet"),
                        WrappedLabel.of(wording.say("measured.better"), "section-title"),
                        WrappedLabel.of(plan("advice." + advice), "words"),
                        WrappedLabel.of(plan("advice.always"), "words"));
        if (isCellAssumed) {
            getChildren().add(WrappedLabel.of(wording.say("measured.assumed"), "quiet"));
        }
    }

    private Label title() {
        return WrappedLabel.of(wording.say("measured.follows"), "section-title");
    }

    private void estimate(GridPane table, String key, Estimate estimate, Unit unit) {
        row(table, key, wording.quantity(estimate.value(), unit), "± " + wording.quantity(estimate.expanded(), unit));
    }

    private void row(GridPane table, String key, String value, String spread) {
        Label number = WrappedLabel.of(value, "measured-value");
        number.setId(key.replace('.', '-') + "-value");
        table.addRow(
                table.getRowCount(),
                WrappedLabel.of(wording.say(key), "words"),
                number,
                WrappedLabel.of(spread, "quiet"));
    }

    /** A sentence about readings that is not of the window alone. */
    private String plan(String key, Object... words) {
        return Texts.in("plan", wording.locale()).say(key, words);
    }
}
