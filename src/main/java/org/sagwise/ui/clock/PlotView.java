package org.sagwise.ui.clock;

import java.util.OptionalDouble;
import java.util.function.DoubleConsumer;
import javafx.beans.property.ObjectProperty;
import javafx.scene.AccessibleRole;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.pen.Pen;
import org.sagwise.picture.plot.Chart;
import org.sagwise.picture.plot.PlotPainter;
import org.sagwise.picture.plot.PlotWords;
import org.sagwise.ui.kit.CanvasLayer;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.settings.LooksModel;

/** A chart in the window. Pointing reads it off; pressing or dragging picks a moment. */
public final class PlotView extends Region {

    private final LooksModel looks;
    private final PlotWords words;
    private final ObjectProperty<OptionalDouble> pointed;
    private final DoubleConsumer pick;
    private final CanvasLayer layer = new CanvasLayer(this::paint);
    private Chart chart = Chart.EMPTY;
    private double nowS;
    private PlotPainter painter;

    /**
     * @param pointed the moment that is pointed at, shared by charts that stand together
     * @param pick hears which moment was picked, s
     */
    public PlotView(
            LooksModel looks,
            PlotWords words,
            ObjectProperty<OptionalDouble> pointed,
            DoubleConsumer pick,
            Subscriptions subscriptions) {
        this.looks = looks;
        this.words = words;
        this.pointed = pointed;
        this.pick = pick;
        getStyleClass().add("plot");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        getChildren().add(layer);
        setOnMouseMoved(this::point);
        setOnMouseExited(event -> pointed.set(OptionalDouble.empty()));
        setOnMousePressed(this::pick);
        setOnMouseDragged(this::pick);
        subscriptions.onChange(pointed, layer::repaint);
        subscriptions.onChange(looks.property(), layer::repaint);
    }

    /** Shows other curves, and the moment at which the clock stands, s. */
    public void show(Chart other, double momentS) {
        chart = other;
        nowS = momentS;
        layer.repaint();
    }

    private void paint(Pen graphics, double width, double height) {
        ThemedPen pen = new ThemedPen(
                graphics,
                looks.get().theme(),
                looks.get().textScale(),
                1,
                looks.get().lineScale());
        painter = new PlotPainter(chart, words, looks.get().textScale(), width, height);
        painter.paint(pen, nowS, pointed.get());
    }

    private void point(MouseEvent event) {
        pointed.set(painter == null ? OptionalDouble.empty() : painter.momentAt(event.getX()));
    }

    private void pick(MouseEvent event) {
        if (event.isPrimaryButtonDown() && painter != null) {
            point(event);
            painter.momentAt(event.getX()).ifPresent(pick::accept);
        }
    }

    @Override
    protected void layoutChildren() {
        layer.resizeRelocate(0, 0, getWidth(), getHeight());
    }
}
