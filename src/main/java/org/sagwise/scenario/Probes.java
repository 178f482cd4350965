package org.sagwise.scenario;

import org.sagwise.part.MeterMode;
import org.sagwise.part.key.Keys;

/**
 * Where the two probes of the meter in the hand rest, and what it is turned to.
 *
 * @param red terminal under the red probe
 * @param black terminal under the black probe
 * @param keys as written
 */
public record Probes(TerminalRef red, TerminalRef black, Keys keys) {

    /** Probes read from keys that hold two well-formed terminals. */
    public static Probes of(Keys keys) {
        return new Probes(
                keys.text("red").flatMap(TerminalRef::parse).orElseThrow(),
                keys.text("black").flatMap(TerminalRef::parse).orElseThrow(),
                keys);
    }

    public static Probes of(TerminalRef red, TerminalRef black) {
        return of(Keys.of("red", red.toString(), "black", black.toString()));
    }

    /** What the meter is turned to. */
    public MeterMode mode() {
        return MeterMode.of(keys);
    }

    /** The same probes with the meter turned; volts need not be said. */
    public Probes turnedTo(MeterMode mode) {
        return of(mode == MeterMode.VOLTS ? keys.without(MeterMode.KEY) : keys.with(MeterMode.KEY, mode.word()));
    }

    /** The same meter with its probes elsewhere. */
    public Probes restingOn(TerminalRef newRed, TerminalRef newBlack) {
        return of(keys.with("red", newRed.toString()).with("black", newBlack.toString()));
    }
}
