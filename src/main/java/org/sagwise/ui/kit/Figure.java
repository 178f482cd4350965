package org.sagwise.ui.kit;

import javafx.application.Platform;
import javafx.geometry.VPos;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;

/**
 * A figure that changes many times a second. It keeps as much room as its widest text has needed,
 * so that nothing around it moves or has to be laid out anew while it changes; and it is a bare
 * text, since a label finds its style anew for every other word.
 */
public final class Figure extends Region {

    private final Text text = new Text();
    private double widest;

    public Figure() {
        text.setTextOrigin(VPos.TOP);
        text.getStyleClass().add("figure-text");
        getStyleClass().add("figure");
        getChildren().add(text);
        text.fontProperty().subscribe((before, now) -> giveRoomAnew());
    }

    /** The text in it, to be found by a name. */
    public void setTextId(String id) {
        text.setId(id);
    }

    public void setText(String words) {
        text.setText(words);
    }

    public String getText() {
        return text.getText();
    }

    private void giveRoomAnew() {
        widest = 0;
        super.requestLayout();
    }

    /** What the text asks for is settled in here, unless it needs more room than ever before. */
    @Override
    public void requestLayout() {
        setNeedsLayout(true);
        StuckLayout.wake(this);
    }

    private double needed() {
        return snappedLeftInset() + Math.ceil(text.getLayoutBounds().getWidth()) + snappedRightInset();
    }

    @Override
    protected double computePrefWidth(double height) {
        widest = Math.max(widest, needed());
        return widest;
    }

    @Override
    protected double computeMinWidth(double height) {
        return computePrefWidth(height);
    }

    @Override
    protected double computeMaxWidth(double height) {
        return Double.MAX_VALUE;
    }

    @Override
    protected double computePrefHeight(double width) {
        return snappedTopInset() + Math.ceil(text.getLayoutBounds().getHeight()) + snappedBottomInset();
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    public double getBaselineOffset() {
        return snappedTopInset() + text.getBaselineOffset();
    }

    @Override
    protected void layoutChildren() {
        double needed = needed();
        double height = getHeight() - snappedTopInset() - snappedBottomInset();
        text.relocate(
                getWidth() - needed + snappedLeftInset(),
                snappedTopInset()
                        + snapPositionY((height - text.getLayoutBounds().getHeight()) / 2));
        if (needed > Math.max(widest, getWidth())) {
            // A request made while those around it are being laid out would be lost.
            Platform.runLater(super::requestLayout);
        }
    }
}
