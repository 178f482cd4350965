package org.sagwise.ui.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.sagwise.assessment.Assessment;
import org.sagwise.reading.Bench;
import org.sagwise.reading.CellReading;
import org.sagwise.scenario.Names;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.document.Spotlight;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.text.Wording;

/** The current of each cell against the limit that its maker set. */
public final class LimitsView extends VBox {

    /** Nobody reads more bars than this. */
    static final int MOST_ROWS = 24;

    private final Spotlight spotlight;
    private Bench known;
    private final Wording wording;
    private final GridPane table = new GridPane();
    private final Label remark = new Label();
    private final Map<String, LimitRow> rows = new LinkedHashMap<>();

    public LimitsView(BenchModel bench, Wording wording, Subscriptions subscriptions) {
        this.spotlight = bench.spotlight();
        this.wording = wording;
        setId("limits");
        getStyleClass().add("limits");
        Label title = new Label(wording.say("limits.title"));
        title.getStyleClass().add("section-title");
        title.setWrapText(true);
        remark.setId("limits-remark");
        remark.setWrapText(true);
        remark.getStyleClass().add("quiet");
        table.getStyleClass().add("limit-rows");
        table.getColumnConstraints().addAll(fixed(), growing(), fixed());
        getChildren().addAll(title, table, remark);
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
        List<CellReading> all = assessment.readings().cells();
        if (assessment.bench() != known) {
            known = assessment.bench();
            List<String> ids = hardest(known.fired().cells());
            if (!ids.equals(List.copyOf(rows.keySet()))) {
                setOut(ids);
            }
        }
        List<CellReading> shown =
                all.stream().filter(cell -> rows.containsKey(cell.id())).toList();
        shown.forEach(cell -> rows.get(cell.id()).show(title(assessment, cell.id()), cell));
        setVisible(!all.isEmpty());
        setManaged(!all.isEmpty());
        boolean some = shown.size() < all.size();
        remark.setVisible(some);
        remark.setManaged(some);
        remark.setText(some ? wording.say("limits.hardest", shown.size(), all.size()) : "");
    }

    /**
     * Of many cells those that carry most of their limit while the button is held, in the order in
     * which they are told. They stay the same whatever time brings.
     */
    private static List<String> hardest(List<CellReading> all) {
        Set<String> hardest = all.stream()
                .sorted(Comparator.comparingDouble(LimitsView::ease))
                .limit(MOST_ROWS)
                .map(CellReading::id)
                .collect(Collectors.toSet());
        return all.stream().map(CellReading::id).filter(hardest::contains).toList();
    }

    /** The less, the harder a cell works against its limit. */
    private static double ease(CellReading cell) {
        return Double.isNaN(cell.loadFraction()) ? 0 : -cell.loadFraction();
    }

    /** Other cells than before: those that stay keep their lines. */
    private void setOut(List<String> ids) {
        Map<String, LimitRow> before = new LinkedHashMap<>(rows);
        rows.clear();
        List<Node> nodes = new ArrayList<>();
        for (String id : ids) {
            LimitRow row = before.computeIfAbsent(id, each -> new LimitRow(each, spotlight, wording));
            List<Node> line = row.nodes();
            for (int column = 0; column < line.size(); column++) {
                GridPane.setConstraints(line.get(column), column, rows.size());
            }
            nodes.addAll(line);
            rows.put(id, row);
        }
        table.getChildren().setAll(nodes);
    }

    private String title(Assessment assessment, String id) {
        return Names.in(wording.locale()).label(assessment.scenario(), id);
    }
}
