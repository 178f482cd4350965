package org.sagwise.lesson;

import java.util.List;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/** A change of how cells stand, with their joints left in place. */
public sealed interface CellMove extends Move {

    /** Flips a cell end for end in its place: what was joined to plus is now joined to minus. */
    record Turn(String cell) implements CellMove {
        @Override
        public Scenario apply(Scenario scenario) {
            return scenario.withLinks(
                    scenario.links().stream().map(this::turned).toList());
        }

        private Link turned(Link link) {
            Keys keys = link.keys();
            return Link.of(keys.with("from", other(link.from()).toString())
                    .with("to", other(link.to()).toString()));
        }

        private TerminalRef other(TerminalRef end) {
            if (!end.part().equals(cell)) {
                return end;
            }
            return switch (end.terminal()) {
                case "+" -> new TerminalRef(cell, "-");
                case "-" -> new TerminalRef(cell, "+");
                default -> end;
            };
        }

        @Override
        public List<String> parts() {
            return List.of(cell);
        }
    }

    /** Lets two cells change places: each is then joined to what the other was joined to. */
    record Swap(String one, String other) implements CellMove {
        @Override
        public Scenario apply(Scenario scenario) {
            return scenario.withLinks(
                    scenario.links().stream().map(this::swapped).toList());
        }

        private Link swapped(Link link) {
            return Link.of(link.keys()
                    .with("from", swapped(link.from()).toString())
                    .with("to", swapped(link.to()).toString()));
        }

        private TerminalRef swapped(TerminalRef end) {
            if (end.part().equals(one)) {
                return new TerminalRef(other, end.terminal());
            }
            return end.part().equals(other) ? new TerminalRef(one, end.terminal()) : end;
        }

        @Override
        public List<String> parts() {
            return List.of(one, other);
        }
    }
}
