package org.sagwise.ui.ledger;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

import org.sagwise.caution.Assessment;
import org.sagwise.reading.CellReading;
import org.sagwise.ui.model.BenchModel;
import org.sagwise.ui.model.Spotlight;
import org.sagwise.ui.model.Subscriptions;
import org.sagwise.ui.text.Wording;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The current of each cell against the limit that its maker set. */
public final class LimitsView extends VBox {

    private final Spotlight spotlight;
    private final Wording wording;
    private final GridPane table = new GridPane();
    private final Map<String, LimitRow> rows = new LinkedHashMap<>();

    public LimitsView(BenchModel bench, Wording wording, Subscriptions subscriptions) {
        this.spotlight = bench.spotlight();
        this.wording = wording;
        setId("limits");
        getStyleClass().add("limits");
        Label title = new Label(wording.say("limits.title"));
        title.getStyleClass().add("section-title");
        title.setWrapText(true);
        table.getStyleClass().add("limit-rows");
        table.getColumnConstraints().addAll(fixed(), growing(), fixed());
        getChildren().addAll(title, table);
        subscriptions.watch(bench.assessmentProperty(), this::show);
    }

    private static ColumnConstraints fixed() {
        ColumnConstraints column = new ColumnConstraints();
        column.setMinWidth(USE_PREF_SIZE);
        return column;
    }

    private static ColumnConstraints growing() {
        ColumnConstraints column = new ColumnConstraints();
        column.setHgrow(Priority.ALWAYS);
        return column;
    }

    private void show(Assessment assessment) {
        List<CellReading> cells = assessment.readings().cells();
        List<String> ids = cells.stream().map(CellReading::id).toList();
        if (!ids.equals(List.copyOf(rows.keySet()))) {
            setOut(ids);
        }
        cells.forEach(cell -> rows.get(cell.id()).show(title(assessment, cell.id()), cell));
        setVisible(!cells.isEmpty());
        setManaged(!cells.isEmpty());
    }

    /** Other cells than before: those that stay keep their lines. */
    private void setOut(List<String> ids) {
        Map<String, LimitRow> before = new LinkedHashMap<>(rows);
        rows.clear();
        table.getChildren().clear();
        for (String id : ids) {
            LimitRow row =
                    before.computeIfAbsent(id, each -> new LimitRow(each, spotlight, wording));
            table.addRow(rows.size(), row.nodes().toArray(Node[]::new));
            rows.put(id, row);
        }
    }

    private static String title(Assessment assessment, String id) {
        return assessment.bench().part(id).name();
    }
}
