package org.sagwise.scenario.edit;

import java.util.List;
import java.util.Set;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/**
 * Sets and clears keys of one part. A key that shuts another out takes its place: a cell has a
 * charge or a rest voltage, a coil an ohm value or a wire. Whether the values make sense is for the
 * rules of the scenario to say, before the edit is kept.
 *
 * @param part id of the part
 * @param values keys to set
 * @param cleared keys to clear
 */
public record SetPartKeys(String part, Keys values, Set<String> cleared) implements Edit {

    /** These say which part it is, and are not to be changed. */
    private static final Set<String> FIXED = Set.of("id", "kind");

    public SetPartKeys {
        cleared = Set.copyOf(cleared);
    }

    public static SetPartKeys set(String part, String name, Object value) {
        return new SetPartKeys(part, Keys.of(name, value), Set.of());
    }

    public static SetPartKeys clear(String part, String... names) {
        return new SetPartKeys(part, Keys.NONE, Set.of(names));
    }

    @Override
    public Scenario apply(Scenario before) {
        return before.withPart(part, old -> Part.of(changed(old.keys(), old.kind())));
    }

    private Keys changed(Keys old, PartKind kind) {
        Keys keys = old;
        for (String name : cleared) {
            keys = FIXED.contains(name) ? keys : keys.without(name);
        }
        for (var entry : values.values().entrySet()) {
            String name = entry.getKey();
            if (!FIXED.contains(name)) {
                keys = keys.without(kind.descriptor().keys().alternativesTo(name));
                keys = keys.with(name, entry.getValue());
            }
        }
        return keys;
    }

    @Override
    public List<Finding> missing(Scenario before) {
        return Missing.parts(before, List.of(part));
    }

    @Override
    public EditName name(Scenario before) {
        return EditName.of("change.part", EditName.partName(before, part));
    }
}
