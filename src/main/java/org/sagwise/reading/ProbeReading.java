package org.sagwise.reading;

import org.sagwise.scenario.TerminalRef;

/**
 * What the multimeter shows.
 *
 * @param red terminal under the red probe
 * @param black terminal under the black probe
 * @param voltsV potential under red minus potential under black, V; NaN where one hangs in the air
 *     or the two are not joined by anything
 */
public record ProbeReading(TerminalRef red, TerminalRef black, double voltsV) {}
