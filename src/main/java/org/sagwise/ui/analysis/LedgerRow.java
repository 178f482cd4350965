package org.sagwise.ui.analysis;

import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.Ledger;
import org.sagwise.ui.text.Figure;
import org.sagwise.ui.text.Wording;

/** One line of the account. It stays while there is such a line, and takes over new figures. */
final class LedgerRow {

    private final Wording wording;
    private final String word;
    private final Label name;
    private final Figure volts = new Figure();
    private final Figure watts = new Figure();
    private final Tooltip exact = new Tooltip();

    LedgerRow(Ledger.Entry entry, Wording wording) {
        this.wording = wording;
        word = entry.name().toLowerCase(Locale.ROOT);
        name = new Label(wording.say("ledger.row." + word));
        name.setWrapText(true);
        volts.label().setId("ledger-" + word + "-volts");
        watts.label().setId("ledger-" + word + "-watts");
        for (Label label : List.of(name, volts.label(), watts.label())) {
            label.getStyleClass().addAll("ledger-row", "ledger-" + word);
            label.setMaxWidth(Double.MAX_VALUE);
            label.setTooltip(exact);
        }
    }

    Node[] nodes() {
        return new Node[] {name, volts, watts};
    }

    /**
     * @param largestV largest volts in the account, which say how many digits there are
     * @param largestW likewise for watts
     */
    void show(Ledger.Row row, double largestV, double largestW) {
        volts.setText(wording.inColumn(row.voltsV(), largestV));
        watts.setText(wording.inColumn(row.powerW(), largestW));
        exact.setText(wording.say(
                "ledger.exact",
                wording.say("ledger.row." + word + ".tip"),
                wording.quantity(row.voltsV(), Unit.VOLT),
                wording.quantity(row.powerW(), Unit.WATT)));
    }

    String spoken(Ledger.Row row) {
        return wording.say(
                "ledger.spoken",
                name.getText(),
                wording.quantity(row.voltsV(), Unit.VOLT),
                wording.quantity(row.powerW(), Unit.WATT));
    }
}
