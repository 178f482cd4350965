package org.sagwise.plan.vary;

import java.util.List;
import java.util.OptionalDouble;
import org.sagwise.reading.NamedReading;
import org.sagwise.reading.Notice;
import org.sagwise.scenario.Finding;

/**
 * A reading over a value.
 *
 * @param variable what changes
 * @param reading what is read
 * @param points in order
 * @param cautions where each caution holds, in order of where it begins
 * @param limit the number the reading is held against, in its unit, if there is one
 * @param now what the value is on the bench, as the file writes it
 */
public record VariedCurve(
        Variable variable,
        NamedReading reading,
        List<Point> points,
        List<CautionSpan> cautions,
        OptionalDouble limit,
        OptionalDouble now) {

    public VariedCurve {
        points = List.copyOf(points);
        cautions = List.copyOf(cautions);
    }

    /**
     * A point of the curve.
     *
     * @param at the value, as the file writes it
     * @param reading in its unit; NaN where there is none
     * @param refused why the rules of the format do not allow the value; empty if they do
     * @param notices what kept the circuit from being solved
     */
    public record Point(double at, double reading, List<Finding> refused, List<Notice> notices) {}
}
