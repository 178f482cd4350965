package org.sagwise.ui.clock;

import java.util.OptionalDouble;
import java.util.stream.Collectors;
import javafx.beans.property.ObjectProperty;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.sagwise.picture.plot.Chart;
import org.sagwise.picture.plot.Curve;
import org.sagwise.picture.plot.PlotWords;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.report.course.ClockTexts;
import org.sagwise.report.course.Quantity;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.settings.LooksModel;

/** The curves of one quantity, under its name and what is read off. */
final class QuantityPlot extends VBox {

    private final Quantity quantity;
    private final ClockTexts texts;
    private final QuantityFormat format;
    private final ObjectProperty<OptionalDouble> pointed;
    private final Label readout = new Label();
    private final PlotView plot;
    private Chart chart = Chart.EMPTY;
    private double nowS;

    QuantityPlot(
            Quantity quantity,
            ClockModel clock,
            LooksModel looks,
            ObjectProperty<OptionalDouble> pointed,
            ClockTexts texts,
            Subscriptions subscriptions) {
        this.quantity = quantity;
        this.texts = texts;
        this.pointed = pointed;
        format = QuantityFormat.forPeople(texts.locale());
        getStyleClass().add("quantity-plot");
        setMinWidth(0);
        setPrefWidth(0);
        Label title = new Label(texts.word("curves." + quantity.word()));
        title.getStyleClass().add("plot-title");
        title.setMinWidth(USE_PREF_SIZE);
        readout.setId("readout-" + quantity.word());
        readout.getStyleClass().add("quiet");
        readout.setMinWidth(0);
        readout.setTooltip(new Tooltip());
        readout.getTooltip().textProperty().bind(readout.textProperty());
        HBox head = new HBox(title, readout);
        head.getStyleClass().add("plot-head");
        PlotWords words = new PlotWords(value -> quantity.tick(value, format), texts::shortTime);
        plot = new PlotView(looks, words, pointed, clock::turnTo, subscriptions);
        plot.setId("plot-" + quantity.word());
        setVgrow(plot, Priority.ALWAYS);
        getChildren().addAll(head, plot);
        subscriptions.onChange(pointed, this::read);
    }

    void show(Chart other, double momentS) {
        chart = other;
        nowS = momentS;
        plot.show(other, momentS);
        read();
    }

    private void read() {
        double momentS = pointed.get().orElse(nowS);
        String values =
                chart.curves().stream().map(curve -> value(curve, momentS)).collect(Collectors.joining(" \u2002"));
        readout.setText(values);
        plot.setAccessibleText(
                texts.word("curves.spoken", texts.word("curves." + quantity.word()), texts.time(momentS), values));
    }

    /** A value; what stands beside it, in brackets after it. */
    private String value(Curve curve, double momentS) {
        String value = curve.name() + " " + quantity.print(curve.at(momentS), format);
        return curve.weight() == Curve.Weight.MAIN ? value : texts.word("curves.beside", value);
    }
}
