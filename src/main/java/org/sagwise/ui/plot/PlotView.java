package org.sagwise.ui.plot;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.scene.AccessibleRole;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.pen.Pen;
import org.sagwise.picture.plot.Chart;
import org.sagwise.picture.plot.PlotPainter;
import org.sagwise.ui.kit.CanvasLayer;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.settings.LooksModel;

/**
 * A chart in the window. Pointing reads it off, by hand or with the arrow keys; pressing, dragging
 * or Enter picks.
 */
public final class PlotView extends Region {

    /** How a point was picked. */
    public enum Pick {
        /** The hand is still on its way. */
        DRAGGED,
        /** The hand let go, or a key was pressed. */
        DONE
    }

    /** Of a long row of places so many are stepped along, and one in so many with Shift. */
    private static final int STEPS = 100;

    private static final int STRIDE = 10;

    private final LooksModel looks;
    private final ObjectProperty<Optional<Point>> pointed;
    private final CanvasLayer layer = new CanvasLayer(this::paint);
    private BiConsumer<Point, Pick> pick = (point, how) -> {};
    private Chart chart = Chart.EMPTY;
    private Optional<Point> now = Optional.empty();
    private PlotPainter painter;

    /**
     * @param pointed what is pointed at, in the values of the axes; shared by charts that stand together
     */
    public PlotView(LooksModel looks, ObjectProperty<Optional<Point>> pointed, Subscriptions subscriptions) {
        this.looks = looks;
        this.pointed = pointed;
        getStyleClass().add("plot");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        getChildren().add(layer);
        setOnMouseMoved(this::point);
        setOnMouseExited(event -> pointed.set(Optional.empty()));
        subscriptions.onChange(pointed, layer::repaint);
        subscriptions.onChange(looks.property(), layer::repaint);
        subscriptions.onChange(focusedProperty(), layer::repaint);
    }

    /** Has picks told as soon as the hand moves, in the values of the axes, to whom it may concern. */
    public void onPick(BiConsumer<Point, Pick> hearer) {
        pick = hearer;
        setOnMousePressed(event -> {
            requestFocus();
            pick(event, Pick.DRAGGED);
        });
        setOnMouseDragged(event -> pick(event, Pick.DRAGGED));
        setOnMouseReleased(event -> pick(event, Pick.DONE));
    }

    /** Lets it be read off with the keyboard: arrows, Home and End step, Enter picks. */
    public void readByKeys() {
        setFocusTraversable(true);
        addEventHandler(KeyEvent.KEY_PRESSED, this::key);
    }

    /** As {@link #onPick}, for who does not ask how. */
    public void onPick(Consumer<Point> hearer) {
        onPick((point, how) -> hearer.accept(point));
    }

    /** Shows another chart, and where things stand in the values of its axes. */
    public void show(Chart other, Optional<Point> standing) {
        chart = other;
        now = standing;
        layer.repaint();
    }

    /** What is shown. */
    public Chart chart() {
        return chart;
    }

    /** Where things stand. */
    public Optional<Point> now() {
        return now;
    }

    private void paint(Pen graphics, double width, double height) {
        ThemedPen pen = new ThemedPen(
                graphics,
                looks.get().theme(),
                looks.get().textScale(),
                1,
                looks.get().lineScale());
        painter = new PlotPainter(chart, looks.get().textScale(), width, height);
        painter.paint(pen, now, pointed.get());
    }

    private Optional<Point> under(MouseEvent event) {
        return painter == null ? Optional.empty() : painter.at(event.getX(), event.getY());
    }

    private void point(MouseEvent event) {
        pointed.set(under(event));
    }

    private void pick(MouseEvent event, Pick how) {
        if (event.getButton() == MouseButton.PRIMARY) {
            point(event);
            pointed.get().ifPresent(point -> pick.accept(point, how));
        }
    }

    private void key(KeyEvent event) {
        int stride = event.isShiftDown() ? STRIDE : 1;
        switch (event.getCode()) {
            case RIGHT -> step(chart.places(), true, stride);
            case LEFT -> step(chart.places(), true, -stride);
            case UP -> stepUp(event, stride);
            case DOWN -> stepUp(event, -stride);
            case HOME -> step(chart.places(), true, Integer.MIN_VALUE / 2);
            case END -> step(chart.places(), true, Integer.MAX_VALUE / 2);
            case ENTER -> pointed.get().ifPresent(point -> pick.accept(point, Pick.DONE));
            default -> {
                return;
            }
        }
        if (!event.getCode().isArrowKey()
                || chart.field().isPresent()
                || event.getCode().isNavigationKey()) {
            event.consume();
        }
    }

    private void stepUp(KeyEvent event, int by) {
        chart.field().ifPresent(field -> {
            step(field.y(), false, by);
            event.consume();
        });
    }

    /** From where is pointed at, or where things stand, to another of these places. */
    private void step(double[] places, boolean isAcross, int by) {
        if (places.length == 0) {
            return;
        }
        Point from = pointed.get().or(() -> now).map(chart::standing).orElse(new Point(places[0], Double.NaN));
        double at = isAcross ? from.x() : from.y();
        int found = Arrays.binarySearch(places, at);
        // Between two places, the next one in the direction of the step.
        int base = found >= 0 ? found : by > 0 ? -found - 2 : -found - 1;
        long wanted = base + (long) by * Math.max(1, places.length / STEPS);
        double to = places[(int) Math.max(0, Math.min(places.length - 1, wanted))];
        pointed.set(Optional.of(isAcross ? new Point(to, from.y()) : new Point(from.x(), to)));
    }

    @Override
    protected void layoutChildren() {
        layer.resizeRelocate(0, 0, getWidth(), getHeight());
    }
}
