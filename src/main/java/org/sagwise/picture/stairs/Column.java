package org.sagwise.picture.stairs;

import org.sagwise.picture.geometry.Box;
import org.sagwise.reading.Staircase.Step;

/**
 * Where one step is drawn.
 *
 * @param step the step
 * @param left its left edge
 * @param right its right edge
 */
record Column(Step step, double left, double right) {

    double middle() {
        return (left + right) / 2;
    }

    /** The block between the potentials before and after it. */
    Box block(StairAxis axis) {
        double top = axis.y(Math.max(step.fromV(), step.toV()));
        double bottom = axis.y(Math.min(step.fromV(), step.toV()));
        return new Box(left, top, right - left, bottom - top);
    }
}
