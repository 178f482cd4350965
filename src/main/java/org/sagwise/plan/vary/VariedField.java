package org.sagwise.plan.vary;

import org.sagwise.reading.NamedReading;

/**
 * A reading over two values. Its arrays are not changed once it is made.
 *
 * @param x what changes along the rows
 * @param y what changes from row to row
 * @param reading what is read
 * @param xs numbers of x, as the file writes them
 * @param ys numbers of y
 * @param values the reading, a row for each y; NaN where there is none
 */
public record VariedField(Variable x, Variable y, NamedReading reading, double[] xs, double[] ys, double[][] values) {}
