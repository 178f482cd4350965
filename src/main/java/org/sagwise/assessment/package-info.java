/**
 * The moments of a bench judged: readings, ledger and staircase of a moment with the cautions in
 * order, and in {@code fix} the cures that were tried.
 *
 * <p>May use {@code hazard}.
 */
package org.sagwise.assessment;
