package org.sagwise.scenario;

import java.util.List;
import java.util.Optional;
import org.sagwise.part.MeterMode;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.Keys;

/**
 * One thing on the bench, as written: a view of its {@link Keys}, which hold {@code id} and {@code
 * kind} among the rest.
 *
 * @param id its name, unique in the scenario
 * @param kind what it is
 * @param keys everything that was written about it, id and kind included
 */
public record Part(String id, PartKind kind, Keys keys) {

    public Part {
        if (!keys.text("id").equals(Optional.of(id)) || !keys.text("kind").equals(Optional.of(kind.word()))) {
            throw new IllegalArgumentException("id and kind must stand among the keys of " + id);
        }
    }

    /** A part with further keys, as alternating names and values. */
    public static Part of(String id, PartKind kind, Object... namesAndValues) {
        Keys keys = Keys.of("id", id, "kind", kind.word());
        for (var entry : Keys.of(namesAndValues).values().entrySet()) {
            keys = keys.with(entry.getKey(), entry.getValue());
        }
        return new Part(id, kind, keys);
    }

    /** A part read from keys that hold a valid id and kind. */
    public static Part of(Keys keys) {
        return new Part(
                keys.text("id").orElseThrow(),
                keys.text("kind").flatMap(PartKind::ofWord).orElseThrow(),
                keys);
    }

    /** What people call it: its label if it has one, else its id. */
    public String name() {
        return keys.text("label").orElse(id);
    }

    public Optional<String> model() {
        return keys.text("model");
    }

    /** What it is turned to; empty if it is no meter. */
    public Optional<MeterMode> meterMode() {
        return kind == PartKind.METER ? Optional.of(MeterMode.of(keys)) : Optional.empty();
    }

    /** Whether it is a meter that is turned to this. */
    public boolean isTurnedTo(MeterMode mode) {
        return meterMode().equals(Optional.of(mode));
    }

    public TerminalRef terminal(String name) {
        return new TerminalRef(id, name);
    }

    public List<TerminalRef> terminals() {
        return kind.terminals().stream().map(this::terminal).toList();
    }

    /** This part with one key set. */
    public Part with(String name, Object value) {
        return of(keys.with(name, value));
    }

    /** This part without some keys. */
    public Part without(String... names) {
        return of(keys.without(names));
    }

    /**
     * The number under a key, or its default from the table of this kind.
     *
     * @throws IllegalArgumentException if the key is absent and has no default
     */
    public double numberOrDefault(String name) {
        return keys.number(name).orElseGet(() -> defaultNumber(name));
    }

    private double defaultNumber(String name) {
        for (KeySpec spec : kind.keys()) {
            if (spec.name().equals(name)
                    && spec.type() instanceof KeySpec.NumberType number
                    && number.defaultValue().isPresent()) {
                return number.defaultValue().get();
            }
        }
        throw new IllegalArgumentException(kind + " has no default " + name);
    }

    /** The word under a key, or its default from the table of this kind; empty if it has none. */
    public Optional<String> wordOrDefault(String name) {
        return keys.text(name).or(() -> defaultWord(name));
    }

    private Optional<String> defaultWord(String name) {
        return kind.keys().stream()
                .filter(spec -> spec.name().equals(name))
                .map(KeySpec::type)
                .filter(KeySpec.ChoiceType.class::isInstance)
                .map(KeySpec.ChoiceType.class::cast)
                .findFirst()
                .flatMap(KeySpec.ChoiceType::defaultValue);
    }
}
