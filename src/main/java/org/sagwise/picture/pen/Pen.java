package org.sagwise.picture.pen;

import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Shape;
import org.sagwise.picture.geometry.Transform;

/**
 * Draws on one kind of surface. These are all the strokes there are; a surface that can do these can
 * show every picture of the program.
 *
 * <p>Every coordinate is finite, and no box has a negative side.
 */
public interface Pen {

    /** Fills a shape by the non-zero rule. */
    void fill(Shape shape, Colour colour);

    /** Draws along a shape; joins are round. */
    void stroke(Shape shape, Stroke stroke, Colour colour);

    /**
     * Writes a line of text.
     *
     * @param text without control characters, see {@link Plain#text}
     * @param x of its left end, its middle or its right end
     * @param y of the baseline
     */
    void text(String text, double x, double y, Align align, Face face, Colour colour);

    /** Draws something in a frame of its own. */
    void within(Transform frame, Runnable drawing);

    /** Draws something of which only what lies in a box is seen. */
    void clipped(Box area, Runnable drawing);
}
