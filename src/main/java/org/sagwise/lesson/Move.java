package org.sagwise.lesson;

import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Keys;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.PartKind;
import org.sagwise.scenario.Probes;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One change of a bench: what a solution is made of, shown to the learner and tried by lint. */
public sealed interface Move {

    /** The bench after it; the same bench where there is nothing to change. */
    Scenario apply(Scenario scenario);

    /** Ids of the parts that it needs. */
    List<String> parts();

    /** Joins two terminals by an ideal joint, or by a touch of so many milliohms. */
    record Join(TerminalRef from, TerminalRef to, double mohm) implements Move {
        @Override
        public Scenario apply(Scenario scenario) {
            return scenario.plus(mohm > 0 ? Link.touch(from, to, mohm) : Link.ideal(from, to));
        }

        @Override
        public List<String> parts() {
            return List.of(from.part(), to.part());
        }
    }

    /** Takes the links between two terminals away. */
    record Cut(TerminalRef from, TerminalRef to) implements Move {
        @Override
        public Scenario apply(Scenario scenario) {
            return scenario.withLinks(
                    scenario.links().stream().filter(link -> !isBetween(link)).toList());
        }

        /** Whether a bench has such a link. */
        public boolean fits(Scenario scenario) {
            return scenario.links().stream().anyMatch(this::isBetween);
        }

        private boolean isBetween(Link link) {
            return (link.from().equals(from) && link.to().equals(to))
                    || (link.from().equals(to) && link.to().equals(from));
        }

        @Override
        public List<String> parts() {
            return List.of(from.part(), to.part());
        }
    }

    /** Takes every link of a part away and leaves the part where it lies. */
    record Free(String part) implements Move {
        @Override
        public Scenario apply(Scenario scenario) {
            return scenario.withLinks(
                    scenario.links().stream().filter(link -> !link.touches(part)).toList());
        }

        @Override
        public List<String> parts() {
            return List.of(part);
        }
    }

    /**
     * Writes keys of a part, each in place of what clashes with it.
     *
     * @param part id of the part
     * @param keys key to value
     */
    record Set(String part, Map<String, Object> keys) implements Move {

        /** A cell is either so charged or resting at so many volts. */
        private static final Map<String, String> CLASH =
                Map.of("charge", "rest_V", "rest_V", "charge");

        public Set {
            keys = Map.copyOf(keys);
        }

        @Override
        public Scenario apply(Scenario scenario) {
            return scenario.withPart(part, this::changed);
        }

        private Part changed(Part old) {
            Part changed = old;
            for (var entry : keys.entrySet()) {
                if (CLASH.containsKey(entry.getKey())) {
                    changed = changed.without(CLASH.get(entry.getKey()));
                }
                changed = changed.with(entry.getKey(), entry.getValue());
            }
            return changed;
        }

        @Override
        public List<String> parts() {
            return List.of(part);
        }
    }

    /** Gives a named link another contact resistance. */
    record Mend(String link, double mohm) implements Move {
        @Override
        public Scenario apply(Scenario scenario) {
            return scenario.withLinks(scenario.links().stream().map(this::mended).toList());
        }

        private Link mended(Link old) {
            if (!old.id().equals(Optional.of(link))) {
                return old;
            }
            Keys bare = old.keys().without("ideal", "contact_mohm", "jumper");
            return Link.of(bare.with("contact_mohm", mohm));
        }

        @Override
        public List<String> parts() {
            return List.of();
        }

        /** Whether a bench has that link. */
        public boolean fits(Scenario scenario) {
            return scenario.links().stream()
                    .anyMatch(
                            it ->
                                    it.id().equals(Optional.of(link))
                                            && !(it.joint() instanceof Joint.Jumper));
        }
    }

    /** Flips a cell end for end in its place: what was joined to plus is now joined to minus. */
    record Turn(String cell) implements Move {
        @Override
        public Scenario apply(Scenario scenario) {
            return scenario.withLinks(scenario.links().stream().map(this::turned).toList());
        }

        private Link turned(Link link) {
            Keys keys = link.keys();
            return Link.of(
                    keys.with("from", other(link.from()).toString())
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
    record Swap(String one, String other) implements Move {
        @Override
        public Scenario apply(Scenario scenario) {
            return scenario.withLinks(scenario.links().stream().map(this::swapped).toList());
        }

        private Link swapped(Link link) {
            return Link.of(
                    link.keys()
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

    /** Puts a new part on the bench. */
    record Add(String id, PartKind kind, Keys keys) implements Move {
        @Override
        public Scenario apply(Scenario scenario) {
            return scenario.part(id).isPresent() ? scenario : scenario.plus(Part.of(keys));
        }

        @Override
        public List<String> parts() {
            return List.of();
        }
    }

    /** Takes a part off the bench, with its links. */
    record Remove(String part) implements Move {
        @Override
        public Scenario apply(Scenario scenario) {
            Scenario freed = new Free(part).apply(scenario);
            return freed.withParts(
                    freed.parts().stream().filter(it -> !it.id().equals(part)).toList());
        }

        @Override
        public List<String> parts() {
            return List.of(part);
        }
    }

    /** Holds the button. */
    record Hold() implements Move {
        @Override
        public Scenario apply(Scenario scenario) {
            return scenario.pressed();
        }

        @Override
        public List<String> parts() {
            return List.of();
        }
    }

    /** Lets the button go. */
    record LetGo() implements Move {
        @Override
        public Scenario apply(Scenario scenario) {
            return scenario.released();
        }

        @Override
        public List<String> parts() {
            return List.of();
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
