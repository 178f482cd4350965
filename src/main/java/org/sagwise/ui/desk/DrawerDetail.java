package org.sagwise.ui.desk;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.sagwise.picture.geometry.Point;
import org.sagwise.plan.drawer.CellMeasurement;
import org.sagwise.plan.drawer.OwnCell;
import org.sagwise.plan.pairing.DrawerWords;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.WrappedLabel;
import org.sagwise.ui.plot.PlotView;
import org.sagwise.ui.settings.LooksModel;

/** One cell: what is to be done about it, its life as curves, and every measurement. */
final class DrawerDetail extends VBox {

    private final DrawerWords words;
    private final Label title = new Label();
    private final Label about = label("drawer-about");
    private final Label advice = label("drawer-advice");
    private final Label pointed = label("drawer-pointed");
    private final Label measured = label("drawer-measured");
    private final Button correct = new Button();
    private final PlotView capacity;
    private final PlotView resistance;
    private final ObjectProperty<Optional<Point>> day = new SimpleObjectProperty<>(Optional.empty());

    DrawerDetail(DrawerWords words, LooksModel looks, Subscriptions subscriptions) {
        this.words = words;
        setId("drawer-detail");
        getStyleClass().add("drawer-detail");
        title.getStyleClass().add("section-title");
        advice.getStyleClass().add("drawer-advice");
        pointed.getStyleClass().add("quiet");
        capacity = plot("drawer-capacity", looks, subscriptions);
        resistance = plot("drawer-resistance", looks, subscriptions);
        subscriptions.watch(day, this::point);
        getChildren().addAll(title, about, advice, capacity, resistance, pointed, measured, correct);
        correct.setText(words.say("window.correct"));
        correct.setId("drawer-correct");
        show(Optional.empty());
    }

    private PlotView plot(String id, LooksModel looks, Subscriptions subscriptions) {
        PlotView plot = new PlotView(looks, day, subscriptions);
        plot.setId(id);
        plot.readByKeys();
        plot.getStyleClass().add("life-plot");
        setVgrow(plot, Priority.ALWAYS);
        return plot;
    }

    private static Label label(String id) {
        Label label = WrappedLabel.of("");
        label.setId(id);
        return label;
    }

    /** What to do when a person wants to correct the last measurement. */
    void onCorrect(Runnable deed) {
        correct.setOnAction(event -> deed.run());
    }

    List<PlotView> plots() {
        return List.of(capacity, resistance);
    }

    /** Shows a cell; a hint where there is none. */
    void show(Optional<OwnCell> cell) {
        title.setText(cell.map(OwnCell::mark).orElse(words.say("window.choose")));
        about.setText(cell.map(this::about).orElse(words.say("window.choose.hint")));
        advice.setText(cell.flatMap(words::advice).orElse(""));
        boolean curves = cell.filter(it -> !it.measurements().isEmpty()).isPresent();
        cell.ifPresent(it -> {
            DrawerLifeChart life = new DrawerLifeChart(it, words);
            capacity.show(life.capacity(), Optional.empty());
            resistance.show(life.resistance(), Optional.empty());
            capacity.setAccessibleText(words.say("window.chart.capacity") + ": " + all(it));
            resistance.setAccessibleText(words.say("window.chart.resistance") + ": " + all(it));
        });
        measured.setText(cell.map(this::all).orElse(""));
        Stream.of(capacity, resistance, pointed, correct).forEach(node -> {
            node.setVisible(curves);
            node.setManaged(curves);
        });
        advice.setManaged(!advice.getText().isEmpty());
        day.set(Optional.empty());
    }

    private String about(OwnCell cell) {
        return Stream.of(
                        cell.name(),
                        words.make(cell),
                        words.state(cell),
                        cell.bought()
                                .map(it -> words.say("window.bought", it.toString()))
                                .orElse(""),
                        cell.marriage()
                                .flatMap(it -> it.since())
                                .map(it -> words.say("window.since", it.toString()))
                                .orElse(""),
                        cell.note())
                .filter(it -> !it.isBlank())
                .reduce((one, other) -> one + " · " + other)
                .orElse("");
    }

    private String all(OwnCell cell) {
        List<String> rows = cell.measurements().stream().map(this::row).toList();
        return rows.isEmpty() ? words.say("window.unmeasured") : String.join("\n", rows);
    }

    private String row(CellMeasurement each) {
        return each.on() + "  "
                + String.join(
                        ", ",
                        Stream.of(
                                        told(each.capacityAh(), words::capacity),
                                        told(each.resistanceOhm(), words::resistance),
                                        told(each.restV(), words::volts),
                                        told(each.weekV(), volts -> words.say("window.week", words.volts(volts))),
                                        each.how())
                                .filter(it -> !it.isEmpty())
                                .toList());
    }

    private static String told(OptionalDouble value, Function<OptionalDouble, String> word) {
        return value.isPresent() ? word.apply(value) : "";
    }

    private void point(Optional<Point> at) {
        pointed.setText(at.map(point -> DrawerLifeChart.date(point.x()) + "  "
                        + Stream.of(capacity, resistance)
                                .flatMap(plot -> plot.chart().told(point.x()).stream())
                                .map(told -> told.text())
                                .reduce((one, other) -> one + ", " + other)
                                .orElse(""))
                .orElse(words.say("window.point")));
    }
}
