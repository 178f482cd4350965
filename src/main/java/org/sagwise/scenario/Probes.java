package org.sagwise.scenario;

/**
 * Where the multimeter's two probes rest.
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
}
