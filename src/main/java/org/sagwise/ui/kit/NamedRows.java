package org.sagwise.ui.kit;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;

/** Values under one another, each behind its name; both are wrapped where there is no room, and no word is broken. */
public final class NamedRows extends GridPane {

    private static final double NAMES_PERCENT = 42;

    public NamedRows() {
        getStyleClass().add("measured-table");
        for (double percent : List.of(NAMES_PERCENT, 100 - NAMES_PERCENT)) {
            ColumnConstraints column = new ColumnConstraints();
            column.setPercentWidth(percent);
            getColumnConstraints().add(column);
        }
    }

    /**
     * One more row.
     *
     * @param id of the value, to be found by
     */
    public void add(String name, String value, String id) {
        Label shown = WrappedLabel.of(value, "measured-value");
        shown.setId(id);
        addRow(getRowCount(), WrappedLabel.of(name, "words"), shown);
    }
}
