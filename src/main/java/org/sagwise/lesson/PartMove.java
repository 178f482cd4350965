package org.sagwise.lesson;

import java.util.List;
import java.util.Map;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/** A change of a part, or of which parts there are. */
public sealed interface PartMove extends Move {

    /**
     * Writes keys of a part, each in place of what clashes with it.
     *
     * @param part id of the part
     * @param keys key to value
     */
    record Set(String part, Map<String, Object> keys) implements PartMove {

        /** A cell is either so charged or resting at so many volts. */
        private static final Map<String, String> CLASH = Map.of("charge", "rest_V", "rest_V", "charge");

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

    /** Puts a new part on the bench. */
    record Add(String id, PartKind kind, Keys keys) implements PartMove {
        @Override
        public Scenario apply(Scenario scenario) {
            return scenario.part(id).isPresent() ? scenario : scenario.plus(Part.of(keys));
        }
    }

    /** Takes a part off the bench, with its links. */
    record Remove(String part) implements PartMove {
        @Override
        public Scenario apply(Scenario scenario) {
            Scenario freed = new LinkMove.Free(part).apply(scenario);
            return freed.withParts(
                    freed.parts().stream().filter(it -> !it.id().equals(part)).toList());
        }

        @Override
        public List<String> parts() {
            return List.of(part);
        }
    }
}
