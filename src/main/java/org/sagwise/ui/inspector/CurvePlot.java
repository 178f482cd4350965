package org.sagwise.ui.inspector;

import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polyline;
import org.sagwise.part.RestVoltageCurve;
import org.sagwise.quantity.KeyNumbers;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.ResolvedCell;
import org.sagwise.ui.text.Wording;

/** The rest voltage of a cell against its charge, with the point at which it stands. */
final class CurvePlot extends VBox {

    private static final double WIDTH = 205;
    private static final double HEIGHT = 84;
    private static final double TOP_ROOM_V = 0.05;
    private static final int POINTS = 60;

    private final Wording wording;
    private final Label words = new Label();
    private final Polyline curve = new Polyline();
    private final Line acrossCharge = new Line();
    private final Line acrossVolts = new Line();
    private final Circle now = new Circle(4.5);

    CurvePlot(Wording wording) {
        this.wording = wording;
        setId("curve");
        getStyleClass().add("curve");
        curve.getStyleClass().add("curve-line");
        acrossCharge.getStyleClass().add("curve-guide");
        acrossVolts.getStyleClass().add("curve-guide");
        now.getStyleClass().add("curve-now");
        Pane plot = new Pane(acrossCharge, acrossVolts, curve, now);
        plot.getStyleClass().add("curve-plot");
        plot.setMinSize(WIDTH, HEIGHT);
        plot.setMaxSize(WIDTH, HEIGHT);
        words.setWrapText(true);
        words.getStyleClass().add("quiet");
        words.setMinHeight(Region.USE_PREF_SIZE);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        getChildren().addAll(plot, words);
    }

    void show(ResolvedCell cell) {
        RestVoltageCurve rest = cell.spec().restCurve();
        double least = rest.voltsAt(0);
        double most = rest.voltsAt(1) + TOP_ROOM_V;
        curve.getPoints().clear();
        for (int i = 0; i <= POINTS; i++) {
            double charge = (double) i / POINTS;
            curve.getPoints().addAll(x(charge), y(rest.voltsAt(charge), least, most));
        }
        double charge = Math.max(0, Math.min(1, cell.start().charge()));
        double volts = Math.max(least, Math.min(most, cell.start().restV()));
        now.setCenterX(x(charge));
        now.setCenterY(y(volts, least, most));
        guide(acrossVolts, 0, now.getCenterY());
        guide(acrossCharge, now.getCenterX(), HEIGHT);
        String text = wording.say(
                "card.curve",
                wording.quantity(cell.start().restV(), Unit.VOLT),
                new KeyNumbers(wording.locale()).roughly(cell.start().charge() * 100),
                wording.quantity(least, Unit.VOLT),
                wording.quantity(rest.voltsAt(1), Unit.VOLT));
        words.setText(text);
        setAccessibleText(text);
    }

    private void guide(Line line, double x, double y) {
        line.setStartX(x);
        line.setStartY(y);
        line.setEndX(now.getCenterX());
        line.setEndY(now.getCenterY());
    }

    private static double x(double charge) {
        return charge * WIDTH;
    }

    private static double y(double volts, double least, double most) {
        return HEIGHT * (most - volts) / (most - least);
    }
}
