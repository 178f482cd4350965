package org.sagwise.run;

/**
 * A step that has been worked out and not yet been taken.
 *
 * @param x numbers at its end
 * @param end currents at its end
 * @param error its error as a multiple of what is allowed
 * @param solved whether the network had an answer throughout
 */
record Trial(double[] x, Instant end, double error, boolean solved) {}
