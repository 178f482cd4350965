/**
 * Inverse questions: matching watts, winding a coil, from meter readings to a model of a cell,
 * tolerances and sweeps.
 *
 * <p>May use {@code assessment} and {@code words}.
 */
package org.sagwise.plan;
