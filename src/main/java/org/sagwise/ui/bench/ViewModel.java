package org.sagwise.ui.bench;

import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.scene.BenchView;

/** What part of the bench is seen: all of it, until somebody zooms or pans. */
public final class ViewModel {

    /** One step of zooming by key. */
    private static final double ZOOM_STEP = 1.25;

    /** One step of panning by key, in pixels. */
    private static final double PAN_STEP = 60;

    private final ReadOnlyObjectWrapper<BenchView> view =
            new ReadOnlyObjectWrapper<>(BenchView.fit(new Box(0, 0, 1, 1), 1, 1));
    private Box all = new Box(0, 0, 1, 1);
    private Box things = all;
    private double width = 1;
    private double height = 1;
    private boolean fitted = true;

    public ReadOnlyObjectProperty<BenchView> property() {
        return view.getReadOnlyProperty();
    }

    public BenchView get() {
        return view.get();
    }

    /**
     * Everything on the bench takes this room now.
     *
     * @param newAll with room about it
     * @param newThings without
     */
    void show(Box newAll, Box newThings) {
        all = newAll;
        things = newThings;
        follow();
    }

    /**
     * The window onto the bench has this size now, in pixels.
     *
     * @return whether that is another size than before
     */
    boolean resize(double newWidth, double newHeight) {
        boolean other = newWidth != width || newHeight != height;
        if (newWidth < 1 || newHeight < 1 || !other) {
            return false;
        }
        boolean whole = showsAll();
        width = newWidth;
        height = newHeight;
        follow();
        if (whole && !showsAll()) {
            // Who saw all of it goes on doing so where another piece of the window takes its room.
            fit();
        }
        return true;
    }

    /** Whether all that lies on the bench is seen. */
    boolean showsAll() {
        return shows(things);
    }

    /** Whether all of an area of the bench is seen. */
    boolean shows(Box area) {
        return new Box(0, 0, width, height).contains(get().toWindow(area));
    }

    /** Keeps the bench where it is seen, whatever comes to it. */
    void hold() {
        fitted = false;
    }

    /** Steps back so far that an area of the bench is seen with all that was seen before. */
    void reveal(Box area) {
        Box seen = get().seen();
        if (!seen.contains(area)) {
            view.set(BenchView.fit(seen.union(area), width, height));
        }
    }

    /** Shows everything, and goes on doing so when the window changes. */
    public void fit() {
        fitted = true;
        follow();
    }

    public void zoomIn() {
        zoom(ZOOM_STEP, width / 2, height / 2);
    }

    public void zoomOut() {
        zoom(1 / ZOOM_STEP, width / 2, height / 2);
    }

    /** Zooms about a point of the window. */
    void zoom(double factor, double x, double y) {
        fitted = false;
        view.set(get().zoomed(factor, x, y));
    }

    /** Moves the bench under the window, in pixels. */
    void pan(double dx, double dy) {
        fitted = false;
        view.set(get().panned(dx, dy));
    }

    /** Looks further by whole steps. */
    void look(int right, int down) {
        pan(-right * PAN_STEP, -down * PAN_STEP);
    }

    private void follow() {
        view.set(fitted ? BenchView.fit(all, width, height) : get().resized(width, height));
    }
}
