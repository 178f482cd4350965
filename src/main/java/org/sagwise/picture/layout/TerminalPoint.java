package org.sagwise.picture.layout;

import org.sagwise.scenario.TerminalRef;

/**
 * Where a terminal is.
 *
 * @param ref which terminal
 * @param x from the left, bench units
 * @param y from the top, bench units
 * @param out the way a conductor leaves it
 */
public record TerminalPoint(TerminalRef ref, int x, int y, Bearing out) {}
