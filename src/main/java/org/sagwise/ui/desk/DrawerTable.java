package org.sagwise.ui.desk;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.collections.transformation.FilteredList;
import javafx.collections.transformation.SortedList;
import javafx.scene.control.Label;
import javafx.scene.control.SelectionMode;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import org.sagwise.part.Catalogue;
import org.sagwise.plan.drawer.Drawer;
import org.sagwise.plan.drawer.OwnCell;
import org.sagwise.plan.pairing.DrawerWords;
import org.sagwise.plan.pairing.Fitness;

/** The cells of a drawer as a table to sort and to filter. */
final class DrawerTable extends TableView<OwnCell> {

    private final DrawerWords words;
    private final ObservableList<OwnCell> all = FXCollections.observableArrayList();
    private final FilteredList<OwnCell> shown = new FilteredList<>(all);

    DrawerTable(DrawerWords words, Catalogue catalogue) {
        this.words = words;
        setId("drawer-table");
        getSelectionModel().setSelectionMode(SelectionMode.MULTIPLE);
        worded("mark", OwnCell::mark, 62);
        worded("make", words::make, 182);
        number("capacity", 90, cell -> cell.capacityAh().orElse(Double.NaN), cell -> words.capacity(cell.capacityAh()));
        number(
                "share",
                66,
                cell -> Fitness.share(cell, catalogue).orElse(Double.NaN),
                cell -> words.share(Fitness.share(cell, catalogue)));
        number(
                "resistance",
                94,
                cell -> cell.resistanceOhm().orElse(Double.NaN),
                cell -> words.resistance(cell.resistanceOhm()));
        number("rest", 72, cell -> cell.restV().orElse(Double.NaN), cell -> words.volts(cell.restV()));
        number("lost", 92, cell -> cell.lostV().orElse(Double.NaN), words::lost);
        worded("measured", cell -> cell.measuredOn().map(Object::toString).orElse(""), 86);
        worded("state", words::state, 125);
        SortedList<OwnCell> sorted = new SortedList<>(shown);
        sorted.comparatorProperty().bind(comparatorProperty());
        setItems(sorted);
        Label none = new Label(words.say("window.none"));
        none.setWrapText(true);
        none.getStyleClass().add("table-hint");
        setPlaceholder(none);
    }

    private void worded(String key, Function<OwnCell, String> cell, double width) {
        Comparator<OwnCell> order =
                Comparator.comparing(it -> cell.apply(it).toLowerCase(Locale.ROOT), DrawerTable::compareMarks);
        column(key, cell, order, "words").setPrefWidth(width);
    }

    /** L2 stands before L10. */
    private static int compareMarks(String one, String other) {
        List<String> left = pieces(one);
        List<String> right = pieces(other);
        for (int i = 0; i < Math.min(left.size(), right.size()); i++) {
            boolean numbers = Character.isDigit(left.get(i).charAt(0))
                    && Character.isDigit(right.get(i).charAt(0));
            int compared = numbers
                    ? Comparator.comparingInt(String::length)
                            .thenComparing(Comparator.naturalOrder())
                            .compare(left.get(i), right.get(i))
                    : left.get(i).compareTo(right.get(i));
            if (compared != 0) {
                return compared;
            }
        }
        return Integer.compare(left.size(), right.size());
    }

    private static List<String> pieces(String text) {
        return List.of(text.split("(?<=\\d)(?=\\D)|(?<=\\D)(?=\\d)")).stream()
                .filter(piece -> !piece.isEmpty())
                .toList();
    }

    private void number(String key, double width, ToDoubleFunction<OwnCell> value, Function<OwnCell, String> cell) {
        column(key, cell, Comparator.comparingDouble(value), "number").setPrefWidth(width);
    }

    private TableColumn<OwnCell, OwnCell> column(
            String key, Function<OwnCell, String> cell, Comparator<OwnCell> order, String style) {
        TableColumn<OwnCell, OwnCell> column = new TableColumn<>(words.say("column." + key));
        column.setId("drawer-column-" + key);
        column.setCellValueFactory(row -> new ReadOnlyObjectWrapper<>(row.getValue()));
        column.setCellFactory(made -> new TableCell<>() {
            @Override
            protected void updateItem(OwnCell item, boolean empty) {
                super.updateItem(item, empty);
                setText(empty || item == null ? "" : cell.apply(item));
            }
        });
        column.setComparator(order);
        column.getStyleClass().add(style);
        column.setReorderable(false);
        getColumns().add(column);
        return column;
    }

    /** Shows these cells; what was chosen stays so, by its mark. */
    void show(Drawer drawer) {
        List<String> chosen = chosen().stream().map(OwnCell::mark).toList();
        all.setAll(drawer.cells());
        choose(chosen);
    }

    /** Chooses the cells of these marks. */
    void choose(List<String> marks) {
        getSelectionModel().clearSelection();
        for (int i = 0; i < getItems().size(); i++) {
            if (marks.contains(getItems().get(i).mark())) {
                getSelectionModel().select(i);
            }
        }
    }

    /** Shows those alone of which every word is told somewhere in their row. */
    void filter(String search) {
        String[] wanted = search.toLowerCase(Locale.ROOT).strip().split("\\s+");
        shown.setPredicate(cell -> {
            String row = String.join(" ", cell.mark(), cell.name(), words.make(cell), words.state(cell), cell.note())
                    .toLowerCase(Locale.ROOT);
            return List.of(wanted).stream().allMatch(row::contains);
        });
    }

    /** The chosen cells, in the order of the table. */
    List<OwnCell> chosen() {
        return getSelectionModel().getSelectedItems().stream()
                .filter(Objects::nonNull)
                .toList();
    }
}
