/**
 * Time: states of cells, coils and wires, presses and rests, charge and heat, events and traces.
 * The one place that carries state from one moment to the next.
 *
 * <p>May use {@code reading} and {@code caution}.
 */
package org.sagwise.run;
