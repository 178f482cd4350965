package org.sagwise.ui.kit;

import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.layout.Region;

/** A button of pictures and wrapped words, as high as these need at its width. */
public class ContentButton extends Button {

    private Region content = new Region();

    protected ContentButton() {
        setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        setAlignment(Pos.TOP_LEFT);
        setMaxWidth(Double.MAX_VALUE);
    }

    /** Puts pictures and words on it. */
    protected final void setContent(Region shown) {
        content = shown;
        setGraphic(shown);
    }

    @Override
    public final Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    /** A button itself would guess. */
    @Override
    protected final double computePrefHeight(double width) {
        double across = snappedLeftInset() + snappedRightInset();
        double inside = width < 0 ? content.prefWidth(-1) : width - across;
        return snappedTopInset() + content.prefHeight(inside) + snappedBottomInset();
    }
}
