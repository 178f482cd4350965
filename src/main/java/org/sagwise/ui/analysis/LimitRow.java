package org.sagwise.ui.analysis;

import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import org.sagwise.interaction.Selection;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.CellReading;
import org.sagwise.ui.document.Spotlight;
import org.sagwise.ui.kit.Figure;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.text.Wording;

/** The line of one cell. It stays while the cell does, and takes over new readings. */
final class LimitRow {

    private final Wording wording;
    private final Label name = new Label();
    private final LoadBar bar = new LoadBar();
    private final Figure figure = new Figure();
    private double limitA = Double.NaN;
    private String limit = "";

    LimitRow(String id, Spotlight spotlight, Wording wording) {
        this.wording = wording;
        figure.setTextId("limit-" + id);
        bar.setAccessibleRole(AccessibleRole.PROGRESS_INDICATOR);
        Tip.put(bar, () -> wording.say("limits.tip", limit));
        bar.setOnMouseEntered(event -> spotlight.point(Selection.part(id)));
        bar.setOnMouseExited(event -> spotlight.point(Selection.NOTHING));
    }

    List<Node> nodes() {
        return List.of(name, bar, figure);
    }

    /**
     * @param title what people call the cell
     */
    void show(String title, CellReading cell) {
        String current = wording.quantity(Math.abs(cell.currentA()), Unit.AMPERE);
        if (Double.compare(cell.limitA(), limitA) != 0) {
            limitA = cell.limitA();
            limit = wording.limit(limitA, Unit.AMPERE);
        }
        String key = cell.currentA() < 0 ? "limits.charging" : "limits.figure";
        String text = wording.say(key, current, limit);
        bar.show(cell.loadFraction());
        if (!text.equals(figure.getText()) || !title.equals(name.getText())) {
            name.setText(title);
            figure.setText(text);
            bar.setAccessibleText(wording.say("limits.spoken", title, text));
        }
    }
}
