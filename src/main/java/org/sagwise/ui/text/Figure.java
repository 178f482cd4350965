package org.sagwise.ui.text;

import javafx.application.Platform;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/**
 * A figure that changes many times a second. It keeps as much room as its widest text has needed,
 * so that nothing around it moves or has to be laid out anew while it changes.
 */
public final class Figure extends Region {

    private final Label label = new Label();
    private double widest;

    public Figure() {
        label.getStyleClass().add("number");
        label.setMinSize(0, 0);
        getChildren().add(label);
        label.fontProperty().subscribe((before, now) -> giveRoomAnew());
    }

    /** The label in it, to be named and styled. */
    public Label label() {
        return label;
    }

    public void setText(String text) {
        label.setText(text);
    }

    public String getText() {
        return label.getText();
    }

    private void giveRoomAnew() {
        widest = 0;
        super.requestLayout();
    }

    /** What the label asks for is settled in here, unless it needs more room than ever before. */
    @Override
    public void requestLayout() {
        setNeedsLayout(true);
    }

    @Override
    protected double computePrefWidth(double height) {
        double asked = Math.max(label.minWidth(height), label.prefWidth(height));
        widest = Math.max(widest, Math.ceil(asked));
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
        return label.prefHeight(width);
    }

    @Override
    protected double computeMinHeight(double width) {
        return label.prefHeight(width);
    }

    @Override
    public double getBaselineOffset() {
        return label.getBaselineOffset();
    }

    @Override
    protected void layoutChildren() {
        label.resizeRelocate(0, 0, getWidth(), getHeight());
        if (label.prefWidth(-1) > Math.max(widest, getWidth())) {
            // A request made while those around it are being laid out would be lost.
            Platform.runLater(super::requestLayout);
        }
    }
}
