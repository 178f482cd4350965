package org.sagwise.ui.analysis;

import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.Ledger;
import org.sagwise.ui.kit.Figure;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.text.Wording;

/** One line of the account. It stays while there is such a line, and takes over new figures. */
final class LedgerRow {

    private final Wording wording;
    private final String word;
    private final Label name;
    private final Figure volts = new Figure();
    private final Figure watts = new Figure();
    private Ledger.Row shown;

    LedgerRow(Ledger.Entry entry, Wording wording) {
        this.wording = wording;
        word = entry.name().toLowerCase(Locale.ROOT);
        name = new Label(wording.say("ledger.row." + word));
        name.setWrapText(true);
        volts.setTextId("ledger-" + word + "-volts");
        watts.setTextId("ledger-" + word + "-watts");
        for (Region piece : List.of(name, volts, watts)) {
            piece.getStyleClass().addAll("ledger-row", "ledger-" + word);
            piece.setMaxWidth(Double.MAX_VALUE);
            Tip.put(piece, this::explain);
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
        shown = row;
    }

    /** Said when somebody asks: figures change many times a second. */
    private String explain() {
        return wording.say(
                "ledger.exact",
                wording.say("ledger.row." + word + ".tip"),
                wording.quantity(shown.voltsV(), Unit.VOLT),
                wording.quantity(shown.powerW(), Unit.WATT));
    }

    String spoken(Ledger.Row row) {
        return wording.say(
                "ledger.spoken",
                name.getText(),
                wording.quantity(row.voltsV(), Unit.VOLT),
                wording.quantity(row.powerW(), Unit.WATT));
    }
}
