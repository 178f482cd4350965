package org.sagwise.ui.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.controlsfx.control.SearchableComboBox;
import org.sagwise.plan.vary.Range;
import org.sagwise.plan.vary.Variable;
import org.sagwise.quantity.Parsed;
import org.sagwise.quantity.QuantityParser;
import org.sagwise.reading.Bench;
import org.sagwise.reading.NamedReading;
import org.sagwise.report.vary.VaryWords;
import org.sagwise.ui.kit.ItemWords;
import org.sagwise.ui.text.Wording;

/** What is asked: which reading, over which value, from where to where, and over which other one. */
final class VaryForm extends VBox {

    private final Wording wording;
    private final Runnable changed;
    private final ComboBox<NamedReading> reading = new SearchableComboBox<>();
    private final ComboBox<Optional<Variable>> value = new SearchableComboBox<>();
    private final ComboBox<Optional<Variable>> second = new SearchableComboBox<>();
    private final TextField from = new TextField();
    private final TextField to = new TextField();
    private final CheckBox bands = new CheckBox();
    private final Label error = new Label();
    private Bench bench;
    private VaryWords words;
    private boolean filling;

    /**
     * @param changed hears that something else is asked
     */
    VaryForm(Wording wording, Runnable changed) {
        this.wording = wording;
        this.changed = changed;
        getStyleClass().addAll("window-options", "vary-form");
        bands.setText(wording.say("vary.bands"));
        bands.setId("vary-bands");
        bands.setWrapText(true);
        bands.selectedProperty().subscribe((before, now) -> tell());
        error.setWrapText(true);
        error.setId("vary-error");
        error.getStyleClass().add("card-error");
        getChildren()
                .setAll(
                        named("vary.reading", reading, "vary-reading"),
                        named("vary.value", value, "vary-value"),
                        new HBox(8, named("vary.from", from, "vary-from"), named("vary.to", to, "vary-to")),
                        named("vary.and", second, "vary-and"),
                        bands,
                        error);
        reading.valueProperty().subscribe((before, now) -> tell());
        value.valueProperty().subscribe((before, now) -> range());
        second.valueProperty().subscribe((before, now) -> tell());
        List.of(from, to).forEach(field -> {
            field.setOnAction(event -> tell());
            field.focusedProperty().subscribe((before, now) -> {
                if (!now) {
                    tell();
                }
            });
        });
    }

    /** Numbers of a bench that are something, or follow from what is written. */
    static List<Variable> variables(Bench bench) {
        return Variable.all(bench.scenario()).stream()
                .filter(it -> it.present(bench).isPresent())
                .toList();
    }

    private VBox named(String key, Control field, String id) {
        Label name = new Label(wording.say(key));
        name.setLabelFor(field);
        field.setId(id);
        field.setAccessibleText(name.getText());
        field.setMaxWidth(Double.MAX_VALUE);
        VBox row = new VBox(2, name, field);
        HBox.setHgrow(row, Priority.ALWAYS);
        return row;
    }

    /** Takes over what there is on a bench; what is asked stays, where it still can be. */
    void follow(Bench other, VaryWords names) {
        bench = other;
        words = names;
        List<NamedReading> readings = NamedReading.all(other);
        List<Optional<Variable>> variables = new ArrayList<>();
        variables(other).forEach(it -> variables.add(Optional.of(it)));
        if (readings.equals(reading.getItems()) && variables.equals(value.getItems())) {
            return;
        }
        filling = true;
        fill(reading, readings, words::name);
        fill(value, variables, it -> it.map(words::name).orElse(""));
        List<Optional<Variable>> others = new ArrayList<>(variables);
        others.add(0, Optional.empty());
        fill(second, others, it -> it.map(words::name).orElse(wording.say("vary.and.none")));
        if (second.getValue() == null) {
            second.setValue(Optional.empty());
        }
        filling = false;
    }

    private static <T> void fill(ComboBox<T> box, List<T> items, Function<T, String> name) {
        T was = box.getValue();
        box.setConverter(new ItemWords<>(name));
        box.getItems().setAll(items);
        box.setValue(items.contains(was) ? was : null);
    }

    /** Asks something. */
    void ask(NamedReading wanted, Variable variable) {
        filling = true;
        reading.setValue(wanted);
        value.setValue(Optional.of(variable));
        filling = false;
        range();
    }

    private void range() {
        if (!filling) {
            variable().ifPresent(it -> {
                Range usual = it.usualRange(bench);
                from.setText(it.print(usual.from(), words.format()));
                to.setText(it.print(usual.to(), words.format()));
            });
            tell();
        }
    }

    private void tell() {
        if (!filling) {
            error.setText("");
            changed.run();
        }
    }

    Optional<NamedReading> reading() {
        return Optional.ofNullable(reading.getValue());
    }

    Optional<Variable> variable() {
        return Optional.ofNullable(value.getValue()).flatMap(it -> it);
    }

    Optional<Variable> second() {
        return Optional.ofNullable(second.getValue())
                .flatMap(it -> it)
                .filter(it -> !variable().equals(Optional.of(it)));
    }

    boolean wantsBands() {
        return bands.isSelected();
    }

    /** From where to where; empty where the fields say no range, which is told. */
    Optional<Range> range(Variable variable) {
        double low = number(from, variable);
        double high = number(to, variable);
        if (Double.isNaN(low + high)) {
            return Optional.empty();
        }
        boolean isAllowed =
                low >= variable.allowed().least() && high <= variable.allowed().most();
        if (!(high > low) || !isAllowed) {
            error.setText(
                    isAllowed
                            ? wording.say("vary.turned")
                            : wording.say(
                                    "vary.not-allowed",
                                    variable.print(variable.allowed().least(), words.format()),
                                    variable.print(variable.allowed().most(), words.format())));
            return Optional.empty();
        }
        return Optional.of(new Range(low, high));
    }

    private double number(TextField field, Variable variable) {
        Parsed parsed = new QuantityParser(wording.locale()).parse(field.getText(), variable.measure());
        if (parsed instanceof Parsed.Value amount) {
            return variable.written(amount.amount());
        }
        error.setText(((Parsed.Refused) parsed).text(wording.locale()));
        return Double.NaN;
    }

    /** Adds what else there is to say under the fields. */
    void add(Node node) {
        getChildren().add(node);
    }
}
