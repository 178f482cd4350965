package org.sagwise.ui.share;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.sagwise.plan.CheckStep;
import org.sagwise.plan.Measured;
import org.sagwise.plan.Measurement;
import org.sagwise.plan.Measurement.Contradiction;
import org.sagwise.plan.MeterCheck;
import org.sagwise.quantity.Measure;
import org.sagwise.quantity.Unit;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.Texts;
import org.sagwise.ui.kit.PlainScroll;
import org.sagwise.ui.kit.QuantityField;
import org.sagwise.ui.text.Wording;

/** A form for what a meter shows, and beside it, as one types, what follows. */
public final class MeasuredPane extends BorderPane {

    private final Wording wording;
    private final QuantityField rest;
    private final QuantityField cell;
    private final QuantityField coil;
    private final QuantityField ohm;
    private final QuantityField limit;
    private final QuantityField capacity;
    private final MeasuredResult result;
    private final Button put;
    private Optional<Scenario> found = Optional.empty();

    /**
     * @param written what was read and written down already
     * @param onBench takes the bench that gives these readings
     */
    public MeasuredPane(Wording wording, Map<CheckStep, String> written, Consumer<Scenario> onBench) {
        this.wording = wording;
        setId("measured");
        rest = field("rest", 4.14, Measure.of(Unit.VOLT));
        cell = field("cell", 3.80, Measure.of(Unit.VOLT));
        coil = field("coil", 3.38, Measure.of(Unit.VOLT));
        ohm = field("ohm", 0.30, Measure.of(Unit.OHM));
        limit = field("limit", Measured.EXAMPLE_LIMIT_A, Measure.of(Unit.AMPERE));
        capacity = field("capacity", Measured.USUAL_CAPACITY_MAH / 1000, Measure.of(Unit.AMPERE_HOUR, "mAh"));
        result = new MeasuredResult(wording);
        put = new Button(wording.say("measured.put"));
        put.setId("measured-put");
        put.setDefaultButton(true);
        put.setOnAction(event -> found.ifPresent(onBench));
        setLeft(PlainScroll.of(form(), "measured-form"));
        setCenter(PlainScroll.of(result, "measured-answer"));
        setBottom(foot());
        written.forEach((step, figure) -> field(step).write(figure));
        fields().forEach(each -> each.textProperty().subscribe((before, now) -> judge()));
        judge();
    }

    private QuantityField field(String key, double example, Measure measure) {
        return new QuantityField(
                "measured-" + key,
                wording.say("measured." + key),
                wording.say("measured.example", wording.quantity(example, measure.unit())),
                measure,
                wording);
    }

    private QuantityField field(CheckStep step) {
        return switch (step) {
            case REST -> rest;
            case CELL -> cell;
            case COIL -> coil;
            case OHM -> ohm;
        };
    }

    private Stream<QuantityField> fields() {
        return Stream.of(rest, cell, coil, ohm, limit, capacity);
    }

    private VBox form() {
        VBox form = new VBox(text("measured.how", "quiet"), rest, cell, coil, ohm);
        form.getChildren().add(text("measured.data-sheet", "section-title"));
        form.getChildren().addAll(limit, capacity);
        form.getStyleClass().add("measured-fields");
        return form;
    }

    private HBox foot() {
        Label hint = text("measured.put.hint", "quiet");
        hint.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(hint, Priority.ALWAYS);
        HBox foot = new HBox(hint, put);
        put.setMinWidth(Button.USE_PREF_SIZE);
        foot.setAlignment(Pos.CENTER_LEFT);
        foot.getStyleClass().add("window-row");
        return foot;
    }

    private void judge() {
        found = Optional.empty();
        List<OptionalDouble> values =
                Stream.of(rest, cell, coil, ohm).map(QuantityField::value).toList();
        OptionalDouble limitA = limit.positive();
        OptionalDouble capacityAh = capacity.positive();
        boolean isCellRead = limit.isEmpty() == limitA.isEmpty() && capacity.isEmpty() == capacityAh.isEmpty();
        if (values.stream().allMatch(OptionalDouble::isPresent)) {
            judge(check(values), limitA, capacityAh);
        } else {
            result.wait("measured.waiting");
        }
        if (!isCellRead) {
            found = Optional.empty();
        }
        put.setDisable(found.isEmpty());
    }

    private MeterCheck check(List<OptionalDouble> values) {
        double restV = values.get(0).getAsDouble();
        double cellV = values.get(1).getAsDouble();
        double coilV = values.get(2).getAsDouble();
        double coilOhm = values.get(3).getAsDouble();
        double voltsStep = Math.max(rest.step(restV), Math.max(cell.step(cellV), coil.step(coilV)));
        return new MeterCheck(restV, cellV, coilV, coilOhm, voltsStep, ohm.step(coilOhm));
    }

    private void judge(MeterCheck check, OptionalDouble limitA, OptionalDouble capacityAh) {
        Measurement.Answer answer = Measurement.of(check);
        if (answer instanceof Measurement.Answer.Refused refused) {
            refused.contradictions().forEach(which -> complain(which, check));
            result.wait("measured.contradiction");
        } else if (answer instanceof Measurement.Answer.Agreed agreed) {
            result.show(agreed.measured(), limitA.isEmpty() || capacityAh.isEmpty());
            double mah = capacityAh.isPresent() ? 1000 * capacityAh.getAsDouble() : Measured.USUAL_CAPACITY_MAH;
            found = Optional.of(agreed.measured().scenario(plan("title"), mah, limitA.orElse(Double.NaN)));
        }
    }

    private void complain(Contradiction which, MeterCheck check) {
        QuantityField field = switch (which) {
            case REST_NOT_POSITIVE, REST_TOO_HIGH -> rest;
            case CELL_ABOVE_REST -> cell;
            case COIL_ABOVE_CELL, COIL_NOT_POSITIVE -> coil;
            case OHM_NOT_POSITIVE -> ohm;
        };
        String key = which.name().toLowerCase(Locale.ROOT).replace('_', '-');
        field.complain(plan(
                "contradiction." + key,
                wording.quantity(check.restV(), Unit.VOLT),
                wording.quantity(check.cellV(), Unit.VOLT),
                wording.quantity(check.coilV(), Unit.VOLT),
                wording.quantity(check.coilOhm(), Unit.OHM)));
    }

    private Label text(String key, String style) {
        Label label = new Label(wording.say(key));
        label.setWrapText(true);
        label.getStyleClass().add(style);
        return label;
    }

    /** A sentence about readings that is not of the window alone. */
    private String plan(String key, Object... words) {
        return Texts.in("plan", wording.locale()).say(key, words);
    }
}
