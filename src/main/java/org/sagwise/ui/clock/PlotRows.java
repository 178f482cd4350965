package org.sagwise.ui.clock;

import java.util.List;
import java.util.function.DoubleSupplier;
import javafx.geometry.Orientation;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.settings.LooksModel;

/**
 * Plots side by side while there is width for their names, axes and units; else in rows of two, or
 * one below the other.
 */
final class PlotRows extends Pane {

    /** What the name and the axis of a plot need, in pixels at the usual size of text. */
    private static final double LEAST_WIDTH = 115;

    /** What a name, a few steps of an axis and its foot need, in pixels at the usual size of text. */
    private static final double LEAST_HEIGHT = 90;

    private static final double GAP = 17;

    private final double[] shares;
    private final DoubleSupplier textScale;

    /**
     * @param plots from left to right
     * @param shares of the width that each takes where all stand side by side
     */
    PlotRows(List<? extends Region> plots, double[] shares, LooksModel looks, Subscriptions subscriptions) {
        this.shares = shares.clone();
        textScale = () -> looks.get().textScale();
        setId("curves-plots");
        getChildren().addAll(plots);
        setMinWidth(0);
        subscriptions.onChange(looks.property(), this::requestLayout);
    }

    /** How many plots stand in a row. */
    static int inRow(double width, double textScale, double[] shares) {
        double whole = 0;
        double least = Double.MAX_VALUE;
        for (double share : shares) {
            whole += share;
            least = Math.min(least, share);
        }
        double gaps = GAP * (shares.length - 1);
        if ((width - gaps) * least / whole >= LEAST_WIDTH * textScale) {
            return shares.length;
        }
        return (width - GAP) / 2 >= LEAST_WIDTH * textScale ? 2 : 1;
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computeMinHeight(double width) {
        int rows = rows(inRow(width < 0 ? getWidth() : width));
        return rows * LEAST_HEIGHT * textScale.getAsDouble() + (rows - 1) * GAP;
    }

    @Override
    protected double computePrefHeight(double width) {
        return computeMinHeight(width);
    }

    @Override
    protected void layoutChildren() {
        int inRow = inRow(getWidth());
        int rows = rows(inRow);
        double height = (getHeight() - GAP * (rows - 1)) / rows;
        for (int row = 0; row < rows; row++) {
            layOut(row * inRow, Math.min(shares.length, (row + 1) * inRow), row * (height + GAP), height);
        }
    }

    private void layOut(int from, int to, double top, double height) {
        // In rows of their own all are alike: no longer does one of them take what the others spare.
        boolean all = to - from == shares.length;
        double whole = 0;
        for (int i = from; i < to; i++) {
            whole += all ? shares[i] : 1;
        }
        double room = getWidth() - GAP * (to - from - 1);
        double left = 0;
        for (int i = from; i < to; i++) {
            double width = room * (all ? shares[i] : 1) / whole;
            getChildren().get(i).resizeRelocate(snapPositionX(left), snapPositionY(top), snapSizeX(width), height);
            left += width + GAP;
        }
    }

    private int inRow(double width) {
        return inRow(width, textScale.getAsDouble(), shares);
    }

    private int rows(int inRow) {
        return (shares.length + inRow - 1) / inRow;
    }
}
