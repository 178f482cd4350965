package org.sagwise.ui.kit;

import java.util.LinkedHashMap;
import java.util.Map;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import org.sagwise.ui.settings.LooksModel;

/**
 * Room for what stands in the columns of a table, however large the letters are: they share a width
 * that is more than enough, and where it is too little the table is moved sideways instead of cutting
 * its words short.
 */
public final class TableRoom {

    private final TableView<?> table;
    private final Map<TableColumn<?, ?>, Double> usual = new LinkedHashMap<>();
    private double scale = 1;

    /** Takes the widths that the columns wish now for those of letters of usual size. */
    public TableRoom(TableView<?> table, LooksModel looks, Subscriptions subscriptions) {
        this.table = table;
        table.getColumns().forEach(column -> usual.put(column, column.getPrefWidth()));
        subscriptions.watch(looks.property(), now -> {
            scale = now.textScale();
            share();
        });
        subscriptions.onChange(table.widthProperty(), this::share);
    }

    private void share() {
        double wished = scale * usual.values().stream().mapToDouble(it -> it).sum();
        if (table.getWidth() >= wished) {
            table.setColumnResizePolicy(TableView.CONSTRAINED_RESIZE_POLICY_FLEX_LAST_COLUMN);
        } else {
            table.setColumnResizePolicy(TableView.UNCONSTRAINED_RESIZE_POLICY);
            // A column keeps the width it was given until it wishes another.
            usual.forEach((column, width) -> {
                column.setPrefWidth(0);
                column.setPrefWidth(scale * width);
            });
        }
    }
}
