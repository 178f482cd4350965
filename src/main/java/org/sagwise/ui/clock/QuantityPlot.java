package org.sagwise.ui.clock;

import java.util.Optional;
import java.util.stream.Collectors;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ObjectProperty;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.plot.Chart;
import org.sagwise.picture.plot.Curve;
import org.sagwise.report.course.ClockTexts;
import org.sagwise.report.course.Quantity;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.plot.PlotView;
import org.sagwise.ui.settings.LooksModel;

/** The curves of one quantity, under its name and what is read off. */
final class QuantityPlot extends VBox {

    private final Quantity quantity;
    private final ClockTexts texts;
    private final ObjectProperty<Optional<Point>> pointed;
    private final Label readout = new Label();
    private final PlotView plot;
    private Chart chart = Chart.EMPTY;
    private double nowS;

    QuantityPlot(
            Quantity quantity,
            ClockModel clock,
            LooksModel looks,
            ObjectProperty<Optional<Point>> pointed,
            ClockTexts texts,
            Subscriptions subscriptions) {
        this.quantity = quantity;
        this.texts = texts;
        this.pointed = pointed;
        getStyleClass().add("quantity-plot");
        setMinWidth(0);
        setPrefWidth(0);
        Label title = new Label(texts.word("curves." + quantity.word()));
        title.getStyleClass().add("plot-title");
        // The title goes before the values, but not beyond its curve.
        title.minWidthProperty()
                .bind(Bindings.createDoubleBinding(
                        () -> Math.min(title.prefWidth(-1), getWidth()), widthProperty(), title.fontProperty()));
        readout.setId("readout-" + quantity.word());
        readout.getStyleClass().add("quiet");
        readout.setMinWidth(0);
        Tip.put(readout, readout.textProperty());
        HBox head = new HBox(title, readout);
        head.getStyleClass().add("plot-head");
        plot = new PlotView(looks, pointed, subscriptions);
        plot.onPick(point -> clock.turnTo(point.x()));
        plot.readByKeys();
        plot.setId("plot-" + quantity.word());
        setVgrow(plot, Priority.ALWAYS);
        getChildren().addAll(head, plot);
        subscriptions.onChange(pointed, this::read);
    }

    void show(Chart other, double momentS) {
        chart = other;
        nowS = momentS;
        plot.show(other, Optional.of(new Point(momentS, Double.NaN)));
        read();
    }

    private void read() {
        double momentS = pointed.get().map(Point::x).orElse(nowS);
        String values = chart.told(momentS).stream().map(this::value).collect(Collectors.joining(" \u2002"));
        readout.setText(values);
        plot.setAccessibleText(
                texts.word("curves.spoken", texts.word("curves." + quantity.word()), texts.time(momentS), values));
    }

    /** A value; what stands beside it, in brackets after it. */
    private String value(Chart.Told told) {
        String value = told.curve().name() + " " + told.text();
        return told.curve().weight() == Curve.Weight.MAIN ? value : texts.word("curves.beside", value);
    }
}
