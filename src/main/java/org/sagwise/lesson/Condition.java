package org.sagwise.lesson;

import java.util.List;
import java.util.OptionalDouble;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Probes;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.scenario.net.Nets;

/** What must be so before a step is done: about the bench as it is, not about how it came so. */
public sealed interface Condition {

    boolean holds(Situation situation);

    /** The terminals that it names. */
    default List<TerminalRef> terminals() {
        return List.of();
    }

    /**
     * A reading lies in a range.
     *
     * @param ref the reading
     * @param bounds the range, in the unit of the reading
     */
    record ReadingIs(ReadingRef ref, Bounds bounds) implements Condition {
        @Override
        public boolean holds(Situation situation) {
            OptionalDouble value = situation.read(ref);
            return value.isPresent() && bounds.hold(value.getAsDouble());
        }
    }

    /**
     * So many parts of a kind have a reading in a range.
     *
     * @param kind the kind
     * @param count how many
     * @param when the moment
     * @param quantity what is read
     * @param bounds the range
     */
    record CountOf(PartKind kind, int count, When when, String quantity, Bounds bounds) implements Condition {
        @Override
        public boolean holds(Situation situation) {
            List<Part> parts = situation.scenario().partsOf(kind);
            return parts.stream().filter(part -> fits(situation.bench(), part)).count() == count;
        }

        private boolean fits(Gauge gauge, Part part) {
            OptionalDouble value = gauge.read(when, part.id(), quantity);
            return value.isPresent() && bounds.hold(value.getAsDouble());
        }
    }

    /** Two terminals are joined by links. */
    record Joined(TerminalRef one, TerminalRef other) implements Condition {
        @Override
        public List<TerminalRef> terminals() {
            return List.of(one, other);
        }

        @Override
        public boolean holds(Situation situation) {
            return CellLayout.byLinks(situation.scenario()).joined(one, other);
        }
    }

    /** Two terminals are not joined by links. */
    record Apart(TerminalRef one, TerminalRef other) implements Condition {
        @Override
        public List<TerminalRef> terminals() {
            return List.of(one, other);
        }

        @Override
        public boolean holds(Situation situation) {
            return !CellLayout.byLinks(situation.scenario()).joined(one, other);
        }
    }

    /** How cells can be joined with each other. */
    enum Arrangement {
        SERIES,
        PARALLEL
    }

    /**
     * The cells that are joined to anything form one row, or stand side by side.
     *
     * @param arrangement which of the two
     * @param cells how many they are
     * @param turned how many stand against the rest
     */
    record Layout(Arrangement arrangement, int cells, int turned) implements Condition {
        @Override
        public boolean holds(Situation situation) {
            CellLayout layout = CellLayout.of(situation.scenario());
            int found = arrangement == Arrangement.SERIES ? layout.turnedInRow(cells) : layout.turnedSideBySide(cells);
            return found == turned;
        }
    }

    /** The button is held or let go. */
    record Button(Press press) implements Condition {
        @Override
        public boolean holds(Situation situation) {
            return situation.press() == press;
        }
    }

    /** The meter's probes rest on these terminals, either way round. */
    record ProbesOn(TerminalRef one, TerminalRef other) implements Condition {
        @Override
        public List<TerminalRef> terminals() {
            return List.of(one, other);
        }

        @Override
        public boolean holds(Situation situation) {
            Scenario scenario = situation.scenario();
            Nets nets = CellLayout.byLinks(scenario);
            return scenario.probes().filter(probes -> fits(nets, probes)).isPresent();
        }

        private boolean fits(Nets nets, Probes probes) {
            return (nets.joined(probes.red(), one) && nets.joined(probes.black(), other))
                    || (nets.joined(probes.red(), other) && nets.joined(probes.black(), one));
        }
    }

    /** A hazard rule finds something. */
    record CautionShown(String id) implements Condition {
        @Override
        public boolean holds(Situation situation) {
            return situation.bench().cautions().stream().anyMatch(it -> it.id().equals(id));
        }
    }

    /** A hazard rule finds nothing. */
    record CautionGone(String id) implements Condition {
        @Override
        public boolean holds(Situation situation) {
            return situation.bench().cautions().stream().noneMatch(it -> it.id().equals(id));
        }
    }

    /** No hazard rule finds anything grave. */
    record NothingGrave() implements Condition {
        @Override
        public boolean holds(Situation situation) {
            return situation.bench().cautions().stream()
                    .noneMatch(it -> it.signal().isGrave());
        }
    }
}
