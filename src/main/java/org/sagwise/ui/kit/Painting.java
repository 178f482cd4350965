package org.sagwise.ui.kit;

import java.awt.Graphics2D;

/** Paints a rectangle of some size from scratch. */
@FunctionalInterface
public interface Painting {

    /**
     * @param graphics what to paint on
     * @param width of the rectangle, in pixels of the window
     * @param height of the rectangle, in pixels of the window
     */
    void paint(Graphics2D graphics, double width, double height);
}
