package org.sagwise.ui.lesson;

import java.util.function.DoubleConsumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.sagwise.quantity.Parsed;
import org.sagwise.quantity.QuantityParser;
import org.sagwise.quantity.Unit;
import org.sagwise.ui.bench.SpaceBar;
import org.sagwise.ui.text.Wording;

/** A field for one number with its unit. */
final class NumberEntry extends VBox {

    private final TextField field = new TextField();
    private final Label trouble = new Label();
    private final Unit unit;
    private final Wording wording;
    private final DoubleConsumer taker;

    /**
     * @param agree what its button says
     * @param taker takes the number, in the unit
     */
    NumberEntry(Unit unit, String agree, Wording wording, DoubleConsumer taker) {
        this.unit = unit;
        this.wording = wording;
        this.taker = taker;
        getStyleClass().add("number-entry");
        field.setId("lesson-number");
        field.getStyleClass().add(SpaceBar.NUMBER_FIELD);
        field.setAccessibleText(wording.say("lesson.number.spoken", unit.base().symbol()));
        field.setOnAction(event -> take());
        Label symbol = new Label(unit.base().symbol());
        symbol.getStyleClass().add("number-unit");
        symbol.setMinWidth(USE_PREF_SIZE);
        Button button = new Button(agree);
        button.setId("lesson-number-do");
        button.setMinWidth(USE_PREF_SIZE);
        button.setOnAction(event -> take());
        HBox row = new HBox(field, symbol, button);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("number-row");
        trouble.setId("lesson-number-trouble");
        trouble.setWrapText(true);
        trouble.getStyleClass().add("lesson-trouble");
        trouble.setVisible(false);
        trouble.setManaged(false);
        getChildren().addAll(row, trouble);
    }

    TextField field() {
        return field;
    }

    private void take() {
        Parsed parsed = new QuantityParser(wording.locale()).parse(field.getText(), unit);
        if (parsed instanceof Parsed.Refused refused) {
            trouble.setText(refused.text(wording.locale()));
            trouble.setVisible(true);
            trouble.setManaged(true);
            field.selectAll();
        } else {
            taker.accept(parsed.value().orElseThrow());
        }
    }
}
