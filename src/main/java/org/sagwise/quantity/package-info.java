/**
 * Units at the border: reading and printing quantities such as {@code 0.30 Ω} and {@code 17.6 W},
 * and rounding to significant digits. Inside the program every value is a {@code double} in its SI
 * unit.
 *
 * <p>May use {@code text}.
 */
package org.sagwise.quantity;
