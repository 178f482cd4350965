package org.sagwise.ui.analysis;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import javafx.geometry.HPos;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.sagwise.assessment.Assessment;
import org.sagwise.part.PartKind;
import org.sagwise.reading.Ledger;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.text.Wording;

/** The account of volts and watts: what the cells give, what is lost where, what arrives. */
public final class LedgerView extends VBox {

    private static final String LET_GO = "ledger.still";
    private static final List<String> PRESSED = List.of("ledger.flows", "ledger.apart");

    private final Wording wording;
    private final GridPane table = new GridPane();
    private final Map<Ledger.Entry, LedgerRow> rows = new LinkedHashMap<>();
    private final Map<String, Label> remarks = new LinkedHashMap<>();
    private final StackPane remark = new StackPane();
    private String pressed = PRESSED.get(0);

    public LedgerView(BenchModel bench, Wording wording, Subscriptions subscriptions) {
        this.wording = wording;
        setId("ledger");
        getStyleClass().add("ledger");
        table.getStyleClass().add("ledger-table");
        table.setAccessibleRole(AccessibleRole.TEXT);
        table.setFocusTraversable(true);
        remark.setAlignment(Pos.TOP_LEFT);
        getChildren().addAll(table, remark);
        heading();
        subscriptions.watch(bench.assessmentProperty(), this::show);
    }

    private void show(Assessment assessment) {
        List<Ledger.Row> account = assessment.ledger().rows();
        List<Ledger.Entry> entries = account.stream().map(Ledger.Row::entry).toList();
        if (!entries.equals(List.copyOf(rows.keySet()))) {
            setOut(entries);
        }
        StringBuilder spoken = new StringBuilder(wording.say("ledger.title"));
        double volts = largest(account.stream().mapToDouble(Ledger.Row::voltsV));
        double watts = largest(account.stream().mapToDouble(Ledger.Row::powerW));
        for (Ledger.Row row : account) {
            LedgerRow line = rows.get(row.entry());
            line.show(row, volts, watts);
            spoken.append(". ").append(line.spoken(row));
        }
        table.setAccessibleText(spoken.toString());
        remark(remarkKey(assessment));
    }

    /** While the button is pressed and let go, both sentences keep their room, and nothing under them moves. */
    private void remark(String key) {
        pressed = PRESSED.contains(key) ? key : pressed;
        boolean goesByTheButton = key.equals(pressed) || key.equals(LET_GO);
        List<String> keeping = goesByTheButton ? List.of(pressed, LET_GO) : List.of(key);
        List<Label> labels = keeping.stream().map(this::label).toList();
        if (!remark.getChildren().equals(labels)) {
            remark.getChildren().setAll(labels);
        }
        remarks.forEach((each, label) -> label.setVisible(each.equals(key)));
    }

    private Label label(String key) {
        return remarks.computeIfAbsent(key, each -> {
            Label label = new Label(wording.say(each));
            label.getStyleClass().add("quiet");
            label.setWrapText(true);
            return label;
        });
    }

    /** Other lines than before: those that stay are kept. */
    private void setOut(List<Ledger.Entry> entries) {
        Map<Ledger.Entry, LedgerRow> before = new LinkedHashMap<>(rows);
        rows.clear();
        table.getChildren().clear();
        heading();
        for (Ledger.Entry entry : entries) {
            LedgerRow line = before.computeIfAbsent(entry, each -> new LedgerRow(each, wording));
            rows.put(entry, line);
            table.addRow(rows.size(), line.nodes());
        }
    }

    /** What the column of volts means, or why there are none. */
    private static String remarkKey(Assessment assessment) {
        if (assessment.isVeiled()) {
            return "ledger.asked";
        }
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
        Label label = new Label(wording.say(key));
        label.getStyleClass().addAll("number", "quiet");
        label.setMinWidth(USE_PREF_SIZE);
        GridPane.setHalignment(label, HPos.RIGHT);
        return label;
    }

    private static double largest(DoubleStream numbers) {
        return numbers.filter(Double::isFinite).map(Math::abs).max().orElse(0);
    }
}
