package org.sagwise.ui.inspector;

import java.util.Arrays;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.sagwise.part.key.KeySpec;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.text.Wording;

/** One value of a card: its name, its field, a way back to the model, and what is wrong with it. */
abstract class CardRow extends VBox {

    /** Letters of a word that fits beside a field with its unit. */
    private static final int LONGEST_BESIDE = 11;

    private final KeySpec spec;
    private final Change change;
    private final Wording wording;
    private final Label error = new Label();
    private final Button back = new Button("↺");

    CardRow(KeySpec spec, Change change, Wording wording) {
        this.spec = spec;
        this.change = change;
        this.wording = wording;
        getStyleClass().add("card-row");
        error.getStyleClass().add("card-error");
        error.setWrapText(true);
        error.setId("error-" + spec.name());
        back.setId("back-" + spec.name());
        back.getStyleClass().add("card-back");
        Tip.put(back, wording.say("card.back.tip"));
        back.setAccessibleText(wording.say("card.back.spoken", name()));
        back.setOnAction(event -> answer(change.clear(spec.name())));
    }

    /** Puts name, field and unit into one line. */
    final void show(Control field, String unit) {
        Label name = new Label(name());
        name.setWrapText(true);
        name.setLabelFor(field);
        name.setMinWidth(0);
        name.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(name, Priority.ALWAYS);
        field.setId("field-" + spec.name());
        field.setAccessibleText(name());
        boolean isLong = hasLongWord(name());
        HBox line = new HBox(isLong ? gap() : name, field);
        if (!unit.isEmpty()) {
            Label symbol = new Label(unit);
            symbol.getStyleClass().add("card-unit");
            symbol.getStyleClass().add("quiet");
            line.getChildren().add(symbol);
        }
        if (spec.need() == KeySpec.Need.OPTIONAL) {
            line.getChildren().add(back);
        }
        line.getStyleClass().add("card-line");
        line.setAlignment(Pos.CENTER_LEFT);
        getChildren().setAll(isLong ? List.of(name, line) : List.of(line));
    }

    /** Beside a field, such a word would be broken in its middle. */
    private static boolean hasLongWord(String name) {
        return Arrays.stream(name.split("[ -]")).anyMatch(word -> word.length() > LONGEST_BESIDE);
    }

    private static Region gap() {
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        return gap;
    }

    /** Puts the field under its name, as wide as the card: for long words. */
    final void showBelow(Control field) {
        Label name = new Label(name());
        name.setLabelFor(field);
        field.setId("field-" + spec.name());
        field.setAccessibleText(name());
        field.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(field, Priority.ALWAYS);
        HBox line = new HBox(field, back);
        line.getStyleClass().add("card-line");
        line.setAlignment(Pos.CENTER_LEFT);
        getChildren().setAll(name, line);
    }

    /** Takes over what is written now. */
    final void refresh() {
        back.setVisible(change.keys().has(spec.name()));
        fill();
    }

    /** Shows the value that is written now, or what holds without one. */
    abstract void fill();

    final void put(Object value) {
        answer(change.set(spec.name(), value));
    }

    final void putNothing() {
        answer(change.keys().has(spec.name()) ? change.clear(spec.name()) : List.of());
    }

    /** Says what is wrong, in sentences; nothing is wrong when there are none. */
    final void answer(List<String> troubles) {
        error.setText(String.join("\n", troubles));
        List<Node> now = getChildren();
        now.remove(error);
        if (!troubles.isEmpty()) {
            now.add(error);
        }
    }

    final String name() {
        return wording.say("key." + spec.name());
    }

    final KeySpec spec() {
        return spec;
    }

    final Change change() {
        return change;
    }

    final Wording wording() {
        return wording;
    }
}
