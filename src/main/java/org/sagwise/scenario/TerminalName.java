package org.sagwise.scenario;

/**
 * What a text calls a terminal, before a language is known: cell A's plus.
 *
 * @param part the part it belongs to
 * @param ref the terminal
 */
public record TerminalName(PartName part, TerminalRef ref) {

    /** The name of a terminal; of a part that is not there its id stands for the name. */
    public static TerminalName of(Scenario scenario, TerminalRef ref) {
        return new TerminalName(PartName.of(scenario, ref.part()), ref);
    }

    /** As a file writes it. */
    @Override
    public String toString() {
        return ref.toString();
    }
}
