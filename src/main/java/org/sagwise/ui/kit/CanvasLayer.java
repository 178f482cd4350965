package org.sagwise.ui.kit;

import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;

/**
 * A canvas as large as the room it gets, painted once a pulse at most. Its size is that of the view and never that of what is looked at: beyond the largest
 * texture, rendering dies.
 */
public final class CanvasLayer extends Region {

    /** Largest side of a texture that every renderer takes, in physical pixels. */
    private static final double LARGEST_TEXTURE = 4096;

    private final Canvas canvas = new Canvas();
    private final Painting painting;
    private final Letters letters = new Letters();
    private boolean stale = true;

    public CanvasLayer(Painting painting) {
        this.painting = painting;
        setMouseTransparent(true);
        getChildren().add(canvas);
    }

    /** Asks for a repaint before the next frame; more than one request makes one repaint. */
    public void repaint() {
        stale = true;
        requestLayout();
    }

    /** Paints now; for an animation that is already called once a frame. */
    public void paintNow() {
        stale = false;
        GraphicsContext context = canvas.getGraphicsContext2D();
        context.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
        if (canvas.getWidth() < 1 || canvas.getHeight() < 1) {
            return;
        }
        context.save();
        painting.paint(new CanvasPen(context, letters), canvas.getWidth(), canvas.getHeight());
        context.restore();
    }

    /** Its room never depends on what is painted in it, so nothing around it need be laid out anew. */
    @Override
    public void requestLayout() {
        setNeedsLayout(true);
        StuckLayout.wake(this);
    }

    @Override
    protected void layoutChildren() {
        double width = clamped(getWidth());
        double height = clamped(getHeight());
        if (width != canvas.getWidth() || height != canvas.getHeight()) {
            canvas.setWidth(width);
            canvas.setHeight(height);
            stale = true;
        }
        if (stale) {
            paintNow();
        }
    }

    private double clamped(double size) {
        double pixelsEach = getScene() == null || getScene().getWindow() == null
                ? 1
                : getScene().getWindow().getRenderScaleX();
        return Math.min(Math.floor(size), Math.floor(LARGEST_TEXTURE / pixelsEach));
    }
}
