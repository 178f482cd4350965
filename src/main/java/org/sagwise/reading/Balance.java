package org.sagwise.reading;

/**
 * How well the numbers add up.
 *
 * @param kclWorstA largest sum of currents at any node, A; 0 if Kirchhoff's rule holds exactly
 * @param powerErrorW power given minus power booked, W
 */
public record Balance(double kclWorstA, double powerErrorW) {}
