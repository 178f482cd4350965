package org.sagwise.ui.kit;

import java.util.List;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** One of a few things to choose, all in sight. */
public final class ChoiceDialog<T> extends VBox {

    private final ReadOnlyObjectWrapper<T> chosen = new ReadOnlyObjectWrapper<>();

    /**
     * @param id beginning of the ids of its buttons
     * @param title what is chosen
     * @param options what there is, the first of which is chosen at the start
     * @param word end of a button's id
     * @param name what a button says
     */
    public ChoiceDialog(String id, String title, List<T> options, Function<T, String> word, Function<T, String> name) {
        getStyleClass().add("option");
        Label label = new Label(title);
        label.getStyleClass().add("quiet");
        FlowPane row = new FlowPane();
        row.getStyleClass().add("option-row");
        ToggleGroup group = new ToggleGroup();
        for (T option : options) {
            ToggleButton button = new ToggleButton(name.apply(option));
            button.setId(id + "-" + word.apply(option));
            button.setAccessibleText(title + ": " + name.apply(option));
            button.setToggleGroup(group);
            button.setUserData(option);
            row.getChildren().add(button);
            button.setOnAction(event -> {
                // One of them is always chosen.
                button.setSelected(true);
                chosen.set(option);
            });
        }
        getChildren().addAll(label, row);
        choose(options.get(0), group);
    }

    private void choose(T option, ToggleGroup group) {
        group.getToggles().forEach(each -> each.setSelected(each.getUserData() == option));
        chosen.set(option);
    }

    public T get() {
        return chosen.get();
    }

    public ReadOnlyObjectProperty<T> chosenProperty() {
        return chosen.getReadOnlyProperty();
    }
}
