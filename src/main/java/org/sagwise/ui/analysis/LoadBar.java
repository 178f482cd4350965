package org.sagwise.ui.analysis;

import javafx.css.PseudoClass;
import javafx.scene.layout.Region;
import org.sagwise.ui.kit.StuckLayout;

/**
 * A bar that fills with a share of a limit. Past the limit the whole bar is the current, and a tick
 * shows where the limit was passed.
 */
final class LoadBar extends Region {

    private static final PseudoClass OVER = PseudoClass.getPseudoClass("over");

    private final Region fill = new Region();
    private final Region tick = new Region();
    private double fraction;

    LoadBar() {
        getStyleClass().add("load-bar");
        fill.getStyleClass().add("load-fill");
        tick.getStyleClass().add("load-tick");
        getChildren().addAll(fill, tick);
        tick.setVisible(false);
    }

    /**
     * @param share share of the limit, 0 or more; NaN where it is not known
     */
    void show(double share) {
        double next = Double.isNaN(share) ? 0 : share;
        if (next != fraction) {
            fraction = next;
            pseudoClassStateChanged(OVER, fraction > 1);
            tick.setVisible(fraction > 1);
            setNeedsLayout(true);
            StuckLayout.wake(this);
        }
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth() - snappedLeftInset() - snappedRightInset();
        double height = getHeight() - snappedTopInset() - snappedBottomInset();
        double filled = width * Math.min(1, fraction);
        fill.resizeRelocate(snappedLeftInset(), snappedTopInset(), filled, height);
        double thick = tick.prefWidth(height);
        double at = fraction > 1 ? width / fraction : width;
        tick.resizeRelocate(snappedLeftInset() + at - thick / 2, 0, thick, getHeight());
    }
}
