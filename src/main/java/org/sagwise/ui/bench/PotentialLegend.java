package org.sagwise.ui.bench;

import java.util.List;
import java.util.stream.IntStream;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Background;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.CornerRadii;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.paint.CycleMethod;
import javafx.scene.paint.LinearGradient;
import javafx.scene.paint.Stop;
import org.sagwise.assessment.Assessment;
import org.sagwise.picture.look.ColourScale;
import org.sagwise.picture.pen.Colour;
import org.sagwise.picture.scene.PotentialScale;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.kit.Figure;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.text.Wording;

/** The colour scale of potential, in one line under the bench, where it covers nothing. */
public final class PotentialLegend extends HBox {

    private static final int STOPS = 33;

    private final Wording wording;
    private final Label title;
    private final Figure low = new Figure();
    private final Figure high = new Figure();

    /**
     * @param coloured whether what is seen is coloured by potential
     */
    public PotentialLegend(
            BenchModel bench, ObservableValue<Boolean> coloured, Wording wording, Subscriptions subscriptions) {
        this.wording = wording;
        setId("potential-legend");
        getStyleClass().add("potential-legend");
        setAlignment(Pos.CENTER_RIGHT);
        setMinWidth(USE_PREF_SIZE);
        Region bar = new Region();
        bar.getStyleClass().add("potential-bar");
        bar.setBackground(new Background(new BackgroundFill(scale(), CornerRadii.EMPTY, null)));
        Tip.put(bar, wording.say("legend.tip"));
        title = new Label(wording.say("legend.title"));
        for (Region words : List.of(title, low, high)) {
            words.getStyleClass().add("quiet");
        }
        getChildren().addAll(title, low, bar, high);
        Runnable show = () -> show(bench.assessment(), coloured.getValue());
        subscriptions.onChange(bench.assessmentProperty(), show);
        subscriptions.onChange(coloured, show);
        show.run();
    }

    /** What the scale is of; its tooltip says the same. */
    public Node title() {
        return title;
    }

    private void show(Assessment assessment, boolean coloured) {
        setVisible(coloured && PotentialScale.isNeeded(assessment.readings()));
        PotentialScale scale = PotentialScale.of(assessment.readings());
        // The zero is that of the staircase, as in pictures: the foot of the bench.
        low.setText(wording.volts(0));
        high.setText(wording.volts(scale.highV() - scale.lowV()));
    }

    private static LinearGradient scale() {
        return new LinearGradient(
                0,
                0,
                1,
                0,
                true,
                CycleMethod.NO_CYCLE,
                IntStream.range(0, STOPS).mapToObj(PotentialLegend::stop).toList());
    }

    private static Stop stop(int index) {
        double share = index / (STOPS - 1.0);
        Colour colour = ColourScale.CIVIDIS.at(share);
        return new Stop(share, Color.rgb(colour.red(), colour.green(), colour.blue()));
    }
}
