/**
 * From a scenario and its operating point to what a person could measure: readings, the ledger in
 * which every volt and watt is booked once, and the staircase of potential.
 *
 * <p>May use {@code scenario}, {@code network} and {@code part}.
 */
package org.sagwise.reading;
