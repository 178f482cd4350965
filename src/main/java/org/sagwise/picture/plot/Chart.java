package org.sagwise.picture.plot;

import java.util.List;

/**
 * Curves of one quantity.
 *
 * @param curves what is drawn
 * @param leastSpan what the axis of values spans at least, in their unit
 * @param endS end of the axis of time, s
 */
public record Chart(List<Curve> curves, double leastSpan, double endS) {

    public static final Chart EMPTY = new Chart(List.of(), 1, 0);

    public Chart {
        curves = List.copyOf(curves);
    }

    PlotScale values(int mostTicks) {
        double least = curves.stream()
                .mapToDouble(Curve::least)
                .filter(Double::isFinite)
                .min()
                .orElse(0);
        double most = curves.stream()
                .mapToDouble(Curve::most)
                .filter(Double::isFinite)
                .max()
                .orElse(1);
        return PlotScale.ofValues(least, most, leastSpan, mostTicks);
    }
}
