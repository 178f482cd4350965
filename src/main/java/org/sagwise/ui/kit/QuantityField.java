package org.sagwise.ui.kit;

import java.util.OptionalDouble;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import org.sagwise.plan.MeterStep;
import org.sagwise.quantity.Measure;
import org.sagwise.quantity.Parsed;
import org.sagwise.quantity.QuantityParser;
import org.sagwise.ui.text.Wording;

/** A field for a quantity with its unit; what is wrong with it stands under it. */
public final class QuantityField extends VBox {

    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");

    private final TextField field = new TextField();
    private final Label error = new Label();
    private final Measure measure;
    private final Wording wording;

    /**
     * @param id of the field
     * @param label what is asked for
     * @param example what could stand there
     * @param measure in which unit a bare number is meant
     */
    public QuantityField(String id, String label, String example, Measure measure, Wording wording) {
        this.measure = measure;
        this.wording = wording;
        getStyleClass().add("quantity-field");
        Label name = new Label(label);
        name.setWrapText(true);
        name.setLabelFor(field);
        field.setId(id);
        field.setPromptText(example);
        field.setPrefColumnCount(10);
        error.setId(id + "-error");
        error.setWrapText(true);
        error.getStyleClass().add("field-error");
        getChildren().addAll(name, field, error);
        complain("");
    }

    public ReadOnlyStringProperty textProperty() {
        return field.textProperty();
    }

    /** Writes a quantity into it. */
    public void write(String quantity) {
        field.setText(quantity);
    }

    public boolean isEmpty() {
        return field.getText().isBlank();
    }

    /** The value in the unit of the measure; empty if there is none, which is said in the field. */
    public OptionalDouble value() {
        return value(measure);
    }

    private OptionalDouble value(Measure bare) {
        if (isEmpty()) {
            complain("");
            return OptionalDouble.empty();
        }
        Parsed parsed = new QuantityParser(wording.locale()).parse(field.getText(), bare);
        complain(parsed instanceof Parsed.Refused refused ? refused.text(wording.locale()) : "");
        return parsed.value();
    }

    /** The value if it is above zero; else empty, which is said in the field. */
    public OptionalDouble positive() {
        return positive(measure);
    }

    /** The same of another measure than the field's own, where what is asked for can change. */
    public OptionalDouble positive(Measure bare) {
        OptionalDouble value = value(bare);
        if (value.isPresent() && !(value.getAsDouble() > 0)) {
            complain(wording.say("measured.not-above"));
            return OptionalDouble.empty();
        }
        return value;
    }

    /** The smallest step of the meter, as far as the digits that were written tell it. */
    public double step(double value) {
        return MeterStep.of(field.getText(), value);
    }

    /** Says what is wrong; nothing for an empty text. */
    public void complain(String words) {
        error.setText(words);
        error.setVisible(!words.isEmpty());
        error.setManaged(!words.isEmpty());
        field.pseudoClassStateChanged(WRONG, !words.isEmpty());
        field.setAccessibleHelp(words);
    }
}
