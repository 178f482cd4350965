package org.sagwise.reading;

import org.sagwise.part.MeterMode;
import org.sagwise.scenario.TerminalRef;

/**
 * What the meter in the hand shows.
 *
 * @param red terminal under the red probe
 * @param black terminal under the black probe
 * @param mode what the meter is turned to
 * @param voltsV what it shows on volts, whatever it is turned to: potential under red minus
 *     potential under black with the meter's 10 MΩ between them, V; NaN where one hangs in the air
 *     or the two are not joined by anything
 * @param display what it shows
 */
public record ProbeReading(TerminalRef red, TerminalRef black, MeterMode mode, double voltsV, MeterDisplay display) {}
