package org.sagwise.ui.analysis;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import org.sagwise.assessment.Assessment;
import org.sagwise.interaction.Selection;
import org.sagwise.reading.NamedReading;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.TableRoom;
import org.sagwise.ui.settings.LooksModel;
import org.sagwise.ui.text.Wording;

/**
 * Parts and readings as a plain table: the bench for everyone who reads better than they look, and
 * for screen readers.
 */
public final class ReadingsTable extends TableView<ReadingsRow> {

    private final Wording wording;

    /**
     * @param vary shows a reading over a value
     */
    public ReadingsTable(
            BenchModel bench,
            Consumer<NamedReading> vary,
            LooksModel looks,
            Wording wording,
            Subscriptions subscriptions) {
        this.wording = wording;
        setId("readings-table");
        getColumns().add(column("name", ReadingsRow::name, "words", 260));
        getColumns().add(column("kind", ReadingsRow::kind, "words", 85));
        getColumns().add(column("volts", ReadingsRow::volts, "number", 88));
        getColumns().add(column("amps", ReadingsRow::amps, "number", 74));
        getColumns().add(column("watts", ReadingsRow::watts, "number", 80));
        getColumns().add(column("remark", ReadingsRow::remark, "words", 310));
        new TableRoom(this, looks, subscriptions);
        subscriptions.watch(bench.assessmentProperty(), this::show);
        getSelectionModel()
                .selectedItemProperty()
                .subscribe(row -> bench.spotlight().point(row == null ? Selection.NOTHING : row.lit()));
        setContextMenu(menu(bench, vary));
        subscriptions.add(() -> bench.spotlight().point(Selection.NOTHING));
    }

    /** By a right click, or the key of the keyboard for it (Shift+F10), on the chosen row. */
    private ContextMenu menu(BenchModel bench, Consumer<NamedReading> vary) {
        ContextMenu menu = new ContextMenu();
        List<String> columns = List.of("volts", "amps", "watts");
        for (int i = 0; i < columns.size(); i++) {
            int place = i;
            MenuItem item = new MenuItem(wording.say("table.vary", wording.say("table." + columns.get(i))));
            item.setId("table-vary-" + columns.get(i));
            item.setOnAction(event ->
                    vary.accept(getSelectionModel().getSelectedItem().readings().get(place)));
            menu.getItems().add(item);
        }
        // Some desktops ask for no menu by key, so the table does it itself.
        setOnKeyPressed(event -> {
            if (event.getCode() == KeyCode.CONTEXT_MENU || event.isShiftDown() && event.getCode() == KeyCode.F10) {
                Node row = lookup(".table-row-cell:selected");
                Node at = row == null ? this : row;
                Bounds room = at.localToScreen(at.getBoundsInLocal());
                menu.show(this, room.getMinX() + room.getWidth() / 3, row == null ? room.getMinY() : room.getMaxY());
                event.consume();
            }
        });
        menu.setOnShowing(event -> {
            boolean nothing = getSelectionModel().getSelectedItem() == null
                    || bench.assessment().isVeiled();
            menu.getItems().forEach(item -> item.setDisable(nothing));
        });
        return menu;
    }

    private void show(Assessment assessment) {
        int selected = getSelectionModel().getSelectedIndex();
        getItems().setAll(ReadingsRow.of(assessment, wording));
        if (selected >= 0 && selected < getItems().size()) {
            getSelectionModel().select(selected);
        }
    }

    private TableColumn<ReadingsRow, String> column(
            String key, Function<ReadingsRow, String> cell, String style, double width) {
        TableColumn<ReadingsRow, String> column = new TableColumn<>(wording.say("table." + key));
        column.setCellValueFactory(row -> new ReadOnlyStringWrapper(cell.apply(row.getValue())));
        column.getStyleClass().add(style);
        column.setPrefWidth(width);
        column.setSortable(false);
        column.setReorderable(false);
        return column;
    }
}
