package org.sagwise.reading;

import org.sagwise.scenario.TerminalRef;

/**
 * What a person could measure at a link.
 *
 * @param index place of the link in the scenario
 * @param from one end
 * @param to the other end
 * @param ohm resistance, Ω; 0 for an ideal joint
 * @param currentA current from {@code from} to {@code to}, A; NaN where it cannot be told apart, as
 *     in a loop of ideal joints
 * @param dropV potential of {@code from} minus {@code to}, V
 * @param heatW power turned into heat, W
 */
public record LinkReading(
        int index, TerminalRef from, TerminalRef to, double ohm, double currentA, double dropV, double heatW) {}
