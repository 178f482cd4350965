package org.sagwise.ui.kit;

import org.sagwise.picture.pen.Pen;

/** Paints a rectangle of some size from scratch. */
@FunctionalInterface
public interface Painting {

    /**
     * @param pen what to paint with
     * @param width of the rectangle, in pixels of the window
     * @param height of the rectangle, in pixels of the window
     */
    void paint(Pen pen, double width, double height);
}
