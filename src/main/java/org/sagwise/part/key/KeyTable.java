package org.sagwise.part.key;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The keys that an object may have, in order, found by name; and what holds among them. */
public final class KeyTable {

    private final List<KeySpec> specs;
    private final List<KeyRule> rules;
    private final Map<String, KeySpec> byName = new LinkedHashMap<>();

    private KeyTable(List<KeySpec> specs, List<KeyRule> rules) {
        this.specs = List.copyOf(specs);
        this.rules = List.copyOf(rules);
        specs.forEach(spec -> byName.put(spec.name(), spec));
    }

    public static KeyTable of(KeySpec... specs) {
        return new KeyTable(List.of(specs), List.of());
    }

    /** The same keys with rules among them. */
    public KeyTable with(KeyRule... held) {
        return new KeyTable(specs, List.of(held));
    }

    public List<KeySpec> specs() {
        return specs;
    }

    public List<KeyRule> rules() {
        return rules;
    }

    /** Keys that cannot stand beside this one. */
    public String[] alternativesTo(String name) {
        return alternatives(rules, name);
    }

    /** Keys that by these rules cannot stand beside one. */
    public static String[] alternatives(List<KeyRule> rules, String name) {
        return rules.stream()
                .map(KeyTable::oneOf)
                .filter(names -> names.contains(name))
                .flatMap(List::stream)
                .filter(other -> !other.equals(name))
                .toArray(String[]::new);
    }

    private static List<String> oneOf(KeyRule rule) {
        if (rule instanceof KeyRule.ExactlyOne one) {
            return one.names();
        }
        return rule instanceof KeyRule.OneOrModel one ? one.names() : List.of();
    }

    public Optional<KeySpec> find(String name) {
        return Optional.ofNullable(byName.get(name));
    }
}
