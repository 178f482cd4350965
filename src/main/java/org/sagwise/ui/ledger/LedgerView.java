package org.sagwise.ui.ledger;

import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

import org.sagwise.caution.Assessment;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.Ledger;
import org.sagwise.scenario.PartKind;
import org.sagwise.ui.model.BenchModel;
import org.sagwise.ui.model.Subscriptions;
import org.sagwise.ui.text.Wording;

import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;

/** The account of volts and watts: what the cells give, what is lost where, what arrives. */
public final class LedgerView extends VBox {

    private final Wording wording;
    private final GridPane table = new GridPane();
    private final Label remark = new Label();

    public LedgerView(BenchModel bench, Wording wording, Subscriptions subscriptions) {
        this.wording = wording;
        setId("ledger");
        getStyleClass().add("ledger");
        table.getStyleClass().add("ledger-table");
        table.setAccessibleRole(AccessibleRole.TEXT);
        table.setFocusTraversable(true);
        remark.getStyleClass().add("quiet");
        remark.setWrapText(true);
        getChildren().addAll(table, remark);
        subscriptions.watch(bench.assessmentProperty(), this::show);
    }

    private void show(Assessment assessment) {
        table.getChildren().clear();
        heading();
        int line = 1;
        StringBuilder spoken = new StringBuilder(wording.say("ledger.title"));
        List<Ledger.Row> rows = assessment.ledger().rows();
        double volts = largest(rows.stream().mapToDouble(Ledger.Row::voltsV));
        double watts = largest(rows.stream().mapToDouble(Ledger.Row::powerW));
        for (Ledger.Row row : rows) {
            add(
                    row,
                    wording.inColumn(row.voltsV(), volts),
                    wording.inColumn(row.powerW(), watts),
                    line++);
            spoken.append(". ").append(spoken(row));
        }
        table.setAccessibleText(spoken.toString());
        remark.setText(wording.say(remarkKey(assessment)));
    }

    /** What the column of volts means, or why there are none. */
    private static String remarkKey(Assessment assessment) {
        Ledger ledger = assessment.ledger();
        if (ledger.rows().stream().anyMatch(row -> Double.isFinite(row.voltsV()))) {
            return "ledger.flows";
        }
        if (ledger.loadCurrentA() > 0) {
            return "ledger.apart";
        }
        boolean switched = !assessment.scenario().partsOf(PartKind.SWITCH).isEmpty();
        return switched && !assessment.readings().fired() ? "ledger.still" : "ledger.idle";
    }

    private void heading() {
        Label title = new Label(wording.say("ledger.title"));
        title.getStyleClass().add("section-title");
        GridPane.setHgrow(title, Priority.ALWAYS);
        title.setMaxWidth(Double.MAX_VALUE);
        title.setWrapText(true);
        table.addRow(0, title, column("ledger.volts"), column("ledger.watts"));
    }

    private Label column(String key) {
        Label label = number(wording.say(key));
        label.getStyleClass().add("quiet");
        return label;
    }

    private static double largest(DoubleStream numbers) {
        return numbers.filter(Double::isFinite).map(Math::abs).max().orElse(0);
    }

    private void add(Ledger.Row row, String voltsText, String wattsText, int line) {
        Label name = new Label(name(row));
        name.setWrapText(true);
        Label volts = number(voltsText);
        Label watts = number(wattsText);
        volts.setId("ledger-" + word(row) + "-volts");
        watts.setId("ledger-" + word(row) + "-watts");
        Tooltip exact =
                new Tooltip(
                        wording.say(
                                "ledger.exact",
                                wording.say("ledger." + word(row) + ".tip"),
                                wording.quantity(row.voltsV(), Unit.VOLT),
                                wording.quantity(row.powerW(), Unit.WATT)));
        for (Label label : new Label[] {name, volts, watts}) {
            label.getStyleClass().addAll("ledger-row", "ledger-" + word(row));
            label.setMaxWidth(Double.MAX_VALUE);
            label.setTooltip(exact);
        }
        table.addRow(line, name, volts, watts);
    }

    private String spoken(Ledger.Row row) {
        return wording.say(
                "ledger.spoken",
                name(row),
                wording.quantity(row.voltsV(), Unit.VOLT),
                wording.quantity(row.powerW(), Unit.WATT));
    }

    private String name(Ledger.Row row) {
        return wording.say("ledger." + word(row));
    }

    private static Label number(String text) {
        Label label = new Label(text);
        label.getStyleClass().add("number");
        label.setMinWidth(USE_PREF_SIZE);
        return label;
    }

    private static String word(Ledger.Row row) {
        return row.entry().name().toLowerCase(Locale.ROOT);
    }
}
