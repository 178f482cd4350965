package org.sagwise.ui.inspector;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.sagwise.part.RestVoltageCurve;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.look.Series;
import org.sagwise.picture.plot.Axis;
import org.sagwise.picture.plot.Chart;
import org.sagwise.picture.plot.Curve;
import org.sagwise.quantity.KeyNumbers;
import org.sagwise.quantity.Measure;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.ResolvedCell;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.plot.PlotView;
import org.sagwise.ui.settings.LooksModel;
import org.sagwise.ui.text.Wording;

/** The rest voltage of a cell against its charge, with the point at which it stands. */
final class CurvePlot extends VBox {

    private static final double LEAST_SPAN_V = 0.1;
    private static final int POINTS = 60;

    private final Wording wording;
    private final Label words = new Label();
    private final PlotView plot;

    CurvePlot(LooksModel looks, Wording wording, Subscriptions subscriptions) {
        this.wording = wording;
        plot = new PlotView(looks, new SimpleObjectProperty<>(Optional.empty()), subscriptions);
        setId("curve");
        getStyleClass().add("curve");
        plot.getStyleClass().add("curve-plot");
        words.setWrapText(true);
        words.getStyleClass().add("quiet");
        words.setMinHeight(Region.USE_PREF_SIZE);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        getChildren().addAll(plot, words);
    }

    void show(ResolvedCell cell) {
        RestVoltageCurve rest = cell.spec().restCurve();
        double[] charge = IntStream.rangeClosed(0, POINTS)
                .mapToDouble(i -> (double) i / POINTS)
                .toArray();
        double[] volts = IntStream.rangeClosed(0, POINTS)
                .mapToDouble(i -> rest.voltsAt(charge[i]))
                .toArray();
        QuantityFormat format = QuantityFormat.forPeople(wording.locale());
        Chart chart = Chart.of(
                        Axis.exact("", 0, 1, Measure.of(Unit.FRACTION, "%"), format),
                        Axis.around("", LEAST_SPAN_V, Measure.of(Unit.VOLT), format))
                .curves(List.of(new Curve("", Series.BLUISH_GREEN, Curve.Weight.MAIN, charge, volts)));
        plot.show(
                chart,
                Optional.of(new Point(
                        Math.max(0, Math.min(1, cell.start().charge())),
                        cell.start().restV())));
        String text = wording.say(
                "card.curve",
                wording.quantity(cell.start().restV(), Unit.VOLT),
                new KeyNumbers(wording.locale()).roughly(cell.start().charge() * 100),
                wording.quantity(rest.voltsAt(0), Unit.VOLT),
                wording.quantity(rest.voltsAt(1), Unit.VOLT));
        words.setText(text);
        setAccessibleText(text);
    }
}
