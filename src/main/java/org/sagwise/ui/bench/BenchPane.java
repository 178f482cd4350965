package org.sagwise.ui.bench;

import javafx.beans.value.ObservableValue;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Rectangle;
import javafx.stage.Window;

import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.ui.canvas.CanvasLayer;
import org.sagwise.ui.model.BenchModel;
import org.sagwise.ui.model.Subscriptions;
import org.sagwise.ui.prefs.Motion;
import org.sagwise.ui.text.Wording;
import org.sagwise.ui.theme.LooksModel;

import java.awt.Graphics2D;
import java.util.Locale;
import java.util.OptionalInt;

/**
 * The bench: a canvas with everything that stands still, repainted only when something changed; a
 * canvas with what moves; and over both the nodes to touch.
 */
public final class BenchPane extends Pane {

    /** Before the window has a size, the bench is set out for this one, in pixels. */
    private static final double LEAST_SIDE = 300;

    private final BenchModel bench;
    private final LooksModel looks;
    private final ViewModel view;
    private final Locale locale;
    private final TouchLayer touch;
    private final CanvasLayer still = new CanvasLayer(this::paintStill);
    private final CanvasLayer moving = new CanvasLayer(this::paintMoving);
    private final Drift drift = new Drift(this::frame);
    private Scenery scenery;

    public BenchPane(
            BenchModel bench,
            LooksModel looks,
            ViewModel view,
            Wording wording,
            Subscriptions subscriptions) {
        this.bench = bench;
        this.looks = looks;
        this.view = view;
        this.locale = wording.locale();
        this.touch = new TouchLayer(bench, wording);
        setId("bench");
        getStyleClass().add("bench");
        setAccessibleRole(AccessibleRole.PARENT);
        getChildren().addAll(still, moving, touch);
        Rectangle clip = new Rectangle();
        clip.widthProperty().bind(widthProperty());
        clip.heightProperty().bind(heightProperty());
        setClip(clip);
        ZoomPan.on(this, view);
        LinkPointer.on(this, bench, this::linkAt);
        listen(subscriptions);
    }

    private void listen(Subscriptions subscriptions) {
        subscriptions.watch(bench.assessmentProperty(), now -> restage());
        subscriptions.onChange(looks.property(), this::restage);
        subscriptions.onChange(bench.spotlight().litProperty(), still::repaint);
        subscriptions.onChange(view.property(), this::reposition);
        ObservableValue<Window> window = sceneProperty().flatMap(s -> s.windowProperty());
        subscriptions.onChange(window.flatMap(Window::showingProperty), this::move);
        subscriptions.add(() -> drift.run(false));
    }

    /** Sets everything out anew: other readings, another document, other looks. */
    private void restage() {
        if (scenery != null && scenery.lies(bench.scenario(), looks.get())) {
            scenery = scenery.with(bench.assessment());
            touch.retell();
            reposition();
        } else {
            setOut();
        }
        move();
    }

    private void setOut() {
        BenchLayout layout =
                SettingOut.of(
                        bench.scenario(),
                        looks.get().textScale(),
                        Math.max(LEAST_SIDE, getWidth()),
                        Math.max(LEAST_SIDE, getHeight()));
        if (scenery == null
                || !scenery.lies(bench.scenario(), looks.get())
                || !layout.equals(scenery.layout())) {
            scenery = Scenery.of(bench.assessment(), layout, looks.get(), locale);
            touch.rebuild(scenery);
            view.show(scenery.bounds());
        }
        reposition();
    }

    private void reposition() {
        touch.place(view.get());
        still.repaint();
        moving.repaint();
    }

    private void move() {
        boolean seen =
                getScene() != null
                        && getScene().getWindow() != null
                        && getScene().getWindow().isShowing();
        boolean full = looks.get().motion() != Motion.REDUCED;
        drift.run(seen && full && scenery.isMoving());
        moving.repaint();
    }

    private void frame(double seconds) {
        scenery.advance(seconds);
        moving.paintNow();
    }

    private OptionalInt linkAt(double x, double y) {
        return scenery.linkAt(view.get(), x, y);
    }

    private void paintStill(Graphics2D graphics, double width, double height) {
        scenery.paintStill(graphics, view.get(), bench.spotlight().lit());
    }

    private void paintMoving(Graphics2D graphics, double width, double height) {
        if (scenery.isMoving()) {
            scenery.paintMoving(graphics, view.get());
        }
    }

    @Override
    protected void layoutChildren() {
        if (view.resize(getWidth(), getHeight())) {
            setOut();
        }
        still.resizeRelocate(0, 0, getWidth(), getHeight());
        moving.resizeRelocate(0, 0, getWidth(), getHeight());
        touch.resizeRelocate(0, 0, getWidth(), getHeight());
    }
}
