package org.sagwise.ui.clock;

import java.util.OptionalDouble;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import org.sagwise.quantity.Digits;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.QuantityParser;
import org.sagwise.quantity.Unit;
import org.sagwise.report.course.ClockTexts;
import org.sagwise.run.RunPlan;
import org.sagwise.ui.kit.Tip;

/** How long each press of a run-down lasts, and the rest after it: two pieces, for two lines if need be. */
final class RunDownForm {

    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");

    /** A press shorter than this is no press, s. */
    private static final double LEAST_PRESS_S = 0.1;

    /** Longer than a day at a time nobody waits, s. */
    private static final double LONGEST_S = 86_400;

    private final ClockModel clock;
    private final ClockTexts texts;
    private final TextField on = new TextField();
    private final TextField off = new TextField();
    private final Label trouble = new Label();
    private final HBox press;
    private final HBox rest;

    RunDownForm(ClockModel clock, ClockTexts texts) {
        this.clock = clock;
        this.texts = texts;
        RunPlan plan = clock.runDown().planProperty().get();
        on.setText(number(plan.onS()));
        off.setText(number(plan.offS()));
        trouble.setId("run-down-trouble");
        trouble.getStyleClass().add("field-trouble");
        trouble.setMinWidth(0);
        trouble.managedProperty().bind(trouble.textProperty().isNotEmpty());
        press = piece(field("run-down.on", on, "run-down-on"), new Label(texts.word("run-down.then")));
        rest = piece(field("run-down.off", off, "run-down-off"), new Label(texts.word("run-down.seconds")), trouble);
        rest.getStyleClass().add("last");
        on.textProperty().subscribe(this::take);
        off.textProperty().subscribe(this::take);
    }

    Node press() {
        return press;
    }

    Node rest() {
        return rest;
    }

    private static HBox piece(Node... nodes) {
        HBox piece = new HBox(nodes);
        piece.getStyleClass().add("run-down-form");
        piece.setAlignment(Pos.CENTER_LEFT);
        return piece;
    }

    private Label field(String key, TextField field, String id) {
        field.setId(id);
        field.getStyleClass().add("seconds");
        Tip.put(field, texts.word(key + ".tip"));
        Label label = new Label(texts.word(key), field);
        label.setContentDisplay(ContentDisplay.RIGHT);
        label.setLabelFor(field);
        label.setMinWidth(Region.USE_PREF_SIZE);
        field.setAccessibleText(texts.word(key));
        return label;
    }

    private String number(double seconds) {
        return QuantityFormat.forPeople(texts.locale()).number(seconds, Digits.atMostDecimals(1));
    }

    private void take() {
        OptionalDouble onS = seconds(on);
        OptionalDouble offS = seconds(off);
        boolean onIsWrong = onS.isEmpty() || !isPress(onS.getAsDouble());
        boolean offIsWrong = offS.isEmpty() || !isRest(offS.getAsDouble());
        on.pseudoClassStateChanged(WRONG, onIsWrong);
        off.pseudoClassStateChanged(WRONG, offIsWrong);
        trouble.setText(
                onIsWrong ? texts.word("run-down.on.wrong") : offIsWrong ? texts.word("run-down.off.wrong") : "");
        if (!onIsWrong && !offIsWrong) {
            clock.runDown().planProperty().set(RunPlan.presses(onS.getAsDouble(), offS.getAsDouble()));
        }
    }

    private static boolean isPress(double seconds) {
        return seconds >= LEAST_PRESS_S && seconds <= LONGEST_S;
    }

    private static boolean isRest(double seconds) {
        return seconds >= 0 && seconds <= LONGEST_S;
    }

    private OptionalDouble seconds(TextField field) {
        return new QuantityParser(texts.locale())
                .parse(field.getText(), Unit.SECOND)
                .value();
    }
}
