package org.sagwise.lesson;

import java.util.List;
import java.util.Optional;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/** A change of what is joined to what. */
public sealed interface LinkMove extends Move {

    /** Joins two terminals by an ideal joint, or by a touch of so many milliohms. */
    record Join(TerminalRef from, TerminalRef to, double mohm) implements LinkMove {
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
    record Cut(TerminalRef from, TerminalRef to) implements LinkMove {
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
    record Free(String part) implements LinkMove {
        @Override
        public Scenario apply(Scenario scenario) {
            return scenario.withLinks(scenario.links().stream()
                    .filter(link -> !link.touches(part))
                    .toList());
        }

        @Override
        public List<String> parts() {
            return List.of(part);
        }
    }

    /** Gives a named link another contact resistance. */
    record Mend(String link, double mohm) implements LinkMove {
        @Override
        public Scenario apply(Scenario scenario) {
            return scenario.withLinks(
                    scenario.links().stream().map(this::mended).toList());
        }

        private Link mended(Link old) {
            if (!old.id().equals(Optional.of(link))) {
                return old;
            }
            Keys bare = old.keys().without("ideal", "contact_mohm", "jumper");
            return Link.of(bare.with("contact_mohm", mohm));
        }

        /** Whether a bench has that link. */
        public boolean fits(Scenario scenario) {
            return scenario.links().stream()
                    .anyMatch(it -> it.id().equals(Optional.of(link)) && !(it.joint() instanceof Joint.Jumper));
        }
    }
}
