package org.sagwise.lesson;

import java.util.List;
import java.util.Optional;
import org.sagwise.scenario.Probes;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/** One change of a bench: what a solution is made of, shown to the learner and tried by lint. */
public sealed interface Move permits LinkMove, CellMove, PartMove, Move.Hold, Move.LetGo, Move.Probe {

    /** The bench after it; the same bench where there is nothing to change. */
    Scenario apply(Scenario scenario);

    /** Ids of the parts that it needs. */
    default List<String> parts() {
        return List.of();
    }

    /** Holds the button. */
    record Hold() implements Move {
        @Override
        public Scenario apply(Scenario scenario) {
            return scenario.pressed();
        }
    }

    /** Lets the button go. */
    record LetGo() implements Move {
        @Override
        public Scenario apply(Scenario scenario) {
            return scenario.released();
        }
    }

    /** Puts the meter's probes on two terminals. */
    record Probe(TerminalRef red, TerminalRef black) implements Move {
        @Override
        public Scenario apply(Scenario scenario) {
            return scenario.withProbes(Optional.of(Probes.of(red, black)));
        }

        @Override
        public List<String> parts() {
            return List.of(red.part(), black.part());
        }
    }

    /** A bench after several moves. */
    static Scenario all(List<Move> moves, Scenario scenario) {
        Scenario moved = scenario;
        for (Move move : moves) {
            moved = move.apply(moved);
        }
        return moved;
    }
}
