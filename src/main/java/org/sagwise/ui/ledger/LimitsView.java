package org.sagwise.ui.ledger;

import javafx.geometry.HPos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

import org.sagwise.caution.Assessment;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.CellReading;
import org.sagwise.scenario.Part;
import org.sagwise.ui.model.BenchModel;
import org.sagwise.ui.model.Lit;
import org.sagwise.ui.model.Subscriptions;
import org.sagwise.ui.text.Wording;

/** The current of each cell against the limit that its maker set. */
public final class LimitsView extends VBox {

    private final BenchModel bench;
    private final Wording wording;
    private final GridPane rows = new GridPane();

    public LimitsView(BenchModel bench, Wording wording, Subscriptions subscriptions) {
        this.bench = bench;
        this.wording = wording;
        setId("limits");
        getStyleClass().add("limits");
        Label title = new Label(wording.say("limits.title"));
        title.getStyleClass().add("section-title");
        title.setWrapText(true);
        rows.getStyleClass().add("limit-rows");
        rows.getColumnConstraints().addAll(fixed(), growing(), fixed());
        getChildren().addAll(title, rows);
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
        rows.getChildren().clear();
        int line = 0;
        for (CellReading cell : assessment.readings().cells()) {
            add(cell, line++);
        }
        setVisible(line > 0);
        setManaged(line > 0);
    }

    private void add(CellReading cell, int line) {
        String current = wording.quantity(Math.abs(cell.currentA()), Unit.AMPERE);
        String limit = wording.limit(cell.limitA(), Unit.AMPERE);
        String key = cell.currentA() < 0 ? "limits.charging" : "limits.figure";
        Label name = new Label(bench.scenario().part(cell.id()).map(Part::name).orElse(cell.id()));
        Label figure = new Label(wording.say(key, current, limit));
        figure.setId("limit-" + cell.id());
        figure.getStyleClass().add("number");
        GridPane.setHalignment(figure, HPos.RIGHT);
        LoadBar bar = new LoadBar(cell.loadFraction());
        bar.setAccessibleRole(AccessibleRole.PROGRESS_INDICATOR);
        bar.setAccessibleText(wording.say("limits.spoken", name.getText(), figure.getText()));
        Tooltip.install(bar, new Tooltip(wording.say("limits.tip", limit)));
        bar.setOnMouseEntered(event -> bench.spotlight().point(Lit.part(cell.id())));
        bar.setOnMouseExited(event -> bench.spotlight().point(Lit.NOTHING));
        rows.addRow(line, name, bar, figure);
    }
}
