package org.sagwise.ui.desk;

import java.util.Locale;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.control.Label;
import javafx.scene.control.SelectionMode;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import org.sagwise.plan.pack.PackChoice;
import org.sagwise.plan.pack.PackWords;
import org.sagwise.plan.pack.PackWords.Column;

/** Every layout that was looked at, to sort by any column. */
final class ChoiceTable extends TableView<PackChoice> {

    private final PackWords words;

    ChoiceTable(PackWords words, String nothing) {
        this.words = words;
        setId("choice-table");
        Label hint = new Label(nothing);
        hint.setWrapText(true);
        hint.getStyleClass().add("table-hint");
        setPlaceholder(hint);
        getSelectionModel().setSelectionMode(SelectionMode.MULTIPLE);
        add(Column.VERDICT, PackChoice::verdict, "words");
        add(Column.CELL, PackChoice::cell, "words");
        add(Column.LAYOUT, PackChoice::layout, "words");
        add(Column.COIL, PackChoice::coilOhm, "number");
        add(Column.POWER, choice -> choice.full().coilW(), "number");
        add(Column.SHARE, PackChoice::share, "number");
        add(
                Column.LASTS,
                choice -> choice.course().map(PackChoice.Course::timeS).orElse(0.0),
                "number");
        getColumns().get(1).setPrefWidth(200);
    }

    private <T extends Comparable<? super T>> void add(Column column, Function<PackChoice, T> value, String style) {
        TableColumn<PackChoice, PackChoice> shown = new TableColumn<>(words.head(column));
        shown.setId("choice-" + column.name().toLowerCase(Locale.ROOT));
        shown.setCellValueFactory(row -> new ReadOnlyObjectWrapper<>(row.getValue()));
        shown.setComparator((one, other) -> value.apply(one).compareTo(value.apply(other)));
        shown.setCellFactory(it -> new TableCell<>() {
            @Override
            protected void updateItem(PackChoice choice, boolean empty) {
                super.updateItem(choice, empty);
                setText(empty || choice == null ? "" : words.cell(choice, column));
            }
        });
        shown.getStyleClass().add(style);
        shown.setReorderable(false);
        getColumns().add(shown);
    }
}
