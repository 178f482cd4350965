package org.sagwise.ui.desk;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.sagwise.part.CellFormat;
import org.sagwise.plan.pack.PackWish;
import org.sagwise.quantity.Measure;
import org.sagwise.quantity.Unit;
import org.sagwise.ui.kit.ItemWords;
import org.sagwise.ui.kit.QuantityField;
import org.sagwise.ui.text.Wording;

/** What is wished of a pack, and of which cells. */
final class ChoiceForm extends VBox {

    private static final int USUAL_CELLS = 4;

    private final Wording wording;
    private final RadioButton watts = new RadioButton();
    private final RadioButton coil = new RadioButton();
    private final QuantityField amount;
    private final CheckBox regulated = new CheckBox();
    private final RadioButton time = new RadioButton();
    private final RadioButton presses = new RadioButton();
    private final QuantityField lasts;
    private final ComboBox<Integer> cells = new ComboBox<>();
    private final ComboBox<String> format = new ComboBox<>();
    private final ComboBox<Boolean> own = new ComboBox<>();

    ChoiceForm(Wording wording) {
        this.wording = wording;
        amount = new QuantityField("choice-amount", wording.say("choice.amount"), "", Measure.of(Unit.WATT), wording);
        lasts = new QuantityField(
                "choice-lasts",
                wording.say("choice.between"),
                wording.say("choice.lasts.example"),
                Measure.of(Unit.SECOND, "h"),
                wording);
        ToggleGroup group = new ToggleGroup();
        wish(watts, "choice.watts", "choice-watts", group);
        wish(coil, "choice.coil", "choice-coil", group);
        FlowPane bar = bar(watts, coil);
        ToggleGroup until = new ToggleGroup();
        wish(time, "choice.time", "choice-time", until);
        wish(presses, "choice.presses", "choice-presses", until);
        time.setSelected(true);
        until.selectedToggleProperty().subscribe((before, now) -> lasts.write(""));
        regulated.setText(wording.say("choice.regulated"));
        regulated.setId("choice-regulated");
        regulated.setWrapText(true);
        regulated.disableProperty().bind(coil.selectedProperty());
        fill(
                cells,
                "choice-cells",
                IntStream.rangeClosed(1, PackWish.MOST_CELLS).boxed().toList());
        cells.setValue(USUAL_CELLS);
        fill(
                format,
                "choice-format",
                Stream.concat(Stream.of(""), Stream.of(CellFormat.values()).map(CellFormat::trade))
                        .toList());
        format.setConverter(new ItemWords<>(word -> word.isEmpty() ? wording.say("choice.format.any") : word));
        format.setValue("");
        fill(own, "choice-own", List.of(false, true));
        own.setConverter(new ItemWords<>(mine -> wording.say(mine ? "choice.own" : "choice.catalogue")));
        own.setValue(false);
        getStyleClass().add("measured-fields");
        getChildren()
                .addAll(
                        heading("choice.wish"),
                        bar,
                        amount,
                        regulated,
                        lasts,
                        bar(time, presses),
                        heading("choice.device"),
                        ItemWords.labelled(wording.say("choice.cells"), cells),
                        ItemWords.labelled(wording.say("choice.format"), format),
                        ItemWords.labelled(wording.say("choice.from"), own));
        watts.setSelected(true);
        amount.write(wording.quantity(40, Unit.WATT));
        group.selectedToggleProperty()
                .subscribe((before, now) ->
                        amount.write(now == coil ? wording.quantity(0.3, Unit.OHM) : wording.quantity(40, Unit.WATT)));
    }

    private static FlowPane bar(RadioButton one, RadioButton other) {
        FlowPane bar = new FlowPane(one, other);
        bar.getStyleClass().add("card-kinds");
        return bar;
    }

    private void wish(RadioButton button, String key, String id, ToggleGroup group) {
        button.setText(wording.say(key));
        button.setId(id);
        button.setToggleGroup(group);
    }

    private static <T> void fill(ComboBox<T> box, String id, List<T> items) {
        box.setId(id);
        box.setMaxWidth(Double.MAX_VALUE);
        box.getItems().setAll(items);
    }

    private Label heading(String key) {
        Label label = new Label(wording.say(key));
        label.getStyleClass().add("section-title");
        return label;
    }

    /** The wish; empty if something is missing, which is said in the field. */
    Optional<PackWish> wish() {
        OptionalDouble wanted = amount.positive(Measure.of(coil.isSelected() ? Unit.OHM : Unit.WATT));
        OptionalDouble lastsS = lastsS();
        if (wanted.isEmpty() && amount.isEmpty()) {
            amount.complain(wording.say("choice.amount.missing"));
        }
        if (wanted.isEmpty() || lastsS.isEmpty() && !lasts.isEmpty()) {
            return Optional.empty();
        }
        OptionalDouble none = OptionalDouble.empty();
        return Optional.of(
                coil.isSelected()
                        ? new PackWish(none, wanted, false, lastsS, cells.getValue())
                        : new PackWish(wanted, none, regulated.isSelected(), lastsS, cells.getValue()));
    }

    private OptionalDouble lastsS() {
        if (time.isSelected()) {
            return lasts.positive();
        }
        OptionalDouble count = lasts.positive(Measure.of(Unit.FRACTION));
        if (count.isEmpty()) {
            return count;
        }
        double many = count.getAsDouble();
        if (many != Math.rint(many) || many > Integer.MAX_VALUE) {
            lasts.complain(wording.say("choice.presses.whole"));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(PackWish.lastsS((int) many));
    }

    /** The format that fits the device; empty where any does. */
    Optional<String> format() {
        return Optional.of(format.getValue()).filter(word -> !word.isEmpty());
    }

    /** Whether the cells of the own drawer shall be taken. */
    boolean isOwn() {
        return own.getValue();
    }
}
