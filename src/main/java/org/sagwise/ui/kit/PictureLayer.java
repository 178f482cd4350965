package org.sagwise.ui.kit;

import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.Region;

/**
 * A picture as large as the room it gets, painted behind the scenes, however long that takes: the
 * last good picture stays until the next one is ready. Requests that come meanwhile make one
 * repaint.
 *
 * @param <P> what is painted; it does not change any more once it is given
 */
public final class PictureLayer<P extends Painting> extends Region {

    /** Longest side of a picture, in physical pixels. */
    private static final double LONGEST_SIDE = 8192;

    private final ImageView view = new ImageView();
    private final Supplier<P> subject;
    private final LatestTask task;
    private final Consumer<P> shown;
    private boolean stale = true;
    private double paintedWidth;
    private double paintedHeight;

    /**
     * @param subject what is to be painted now
     * @param behindTheScenes where it is painted
     * @param shown is told in front what is seen from now on
     */
    public PictureLayer(Supplier<P> subject, Executor behindTheScenes, Consumer<P> shown) {
        this.subject = subject;
        this.task = LatestTask.in(behindTheScenes);
        this.shown = shown;
        setMouseTransparent(true);
        getChildren().add(view);
    }

    /** Asks for a new picture. */
    public void repaint() {
        stale = true;
        requestLayout();
    }

    /** Its room never depends on what is painted in it, so nothing around it need be laid out anew. */
    @Override
    public void requestLayout() {
        setNeedsLayout(true);
        StuckLayout.wake(this);
    }

    @Override
    protected void layoutChildren() {
        double width = Math.floor(getWidth());
        double height = Math.floor(getHeight());
        boolean resized = width != paintedWidth || height != paintedHeight;
        if ((stale || resized) && !task.isBusy() && width >= 1 && height >= 1) {
            paint(width, height);
        }
    }

    private void paint(double width, double height) {
        stale = false;
        paintedWidth = width;
        paintedHeight = height;
        P painting = subject.get();
        double scale = Math.min(pixelsEach(), LONGEST_SIDE / Math.max(width, height));
        task.give(() -> {
            Image image = Snapshot.of(painting, width, height, scale);
            return () -> show(painting, image);
        });
    }

    private void show(P painting, Image image) {
        view.setFitWidth(paintedWidth);
        view.setFitHeight(paintedHeight);
        view.setImage(image);
        shown.accept(painting);
        requestLayout();
    }

    private double pixelsEach() {
        return getScene() == null || getScene().getWindow() == null
                ? 1
                : getScene().getWindow().getRenderScaleX();
    }
}
