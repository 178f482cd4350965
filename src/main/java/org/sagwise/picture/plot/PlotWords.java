package org.sagwise.picture.plot;

import java.util.function.DoubleFunction;

/**
 * How the numbers at the axes of a chart are written.
 *
 * @param value a value of the chart
 * @param time a moment, s
 */
public record PlotWords(DoubleFunction<String> value, DoubleFunction<String> time) {}
