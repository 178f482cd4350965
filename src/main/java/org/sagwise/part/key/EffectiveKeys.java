package org.sagwise.part.key;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What holds for an object: what it says itself; else what its model says; else what holds around
 * it; else what follows from its other values, or is usual by the table. The one place that knows
 * this order. Immutable.
 */
public final class EffectiveKeys {

    private static final double MILLI = 1e-3;

    private final KeyTable table;
    private final Keys own;
    private final Keys model;
    private final Keys around;

    /** Nothing said at all, and nothing usual but what a table says. */
    public static final EffectiveKeys NONE = new EffectiveKeys(KeyTable.of(), Keys.NONE, Keys.NONE, Keys.NONE);

    private EffectiveKeys(KeyTable table, Keys own, Keys model, Keys around) {
        this.table = table;
        this.own = own;
        this.model = model;
        this.around = around;
    }

    /**
     * @param table what keys there are
     * @param own what the object says
     * @param model what its model says; none without a model
     * @param around what holds for everything where nothing else is said, such as the temperature
     */
    public static EffectiveKeys of(KeyTable table, Keys own, Keys model, Keys around) {
        return new EffectiveKeys(table, own, besides(own, model, table), around);
    }

    /** What a model says besides what the object says itself in another way, such as the ohms of a coil for its wire. */
    private static Keys besides(Keys own, Keys model, KeyTable table) {
        Keys left = model;
        for (String name : own.values().keySet()) {
            left = left.without(table.alternativesTo(name));
        }
        return left;
    }

    /** Whether the object says this itself. */
    public boolean isOwn(String name) {
        return own.has(name);
    }

    /** Whether anybody says this: the object, its model or its surroundings. */
    public boolean isSaid(String name) {
        return said(name) != null;
    }

    /**
     * The number under a key, in the unit that the key's ending names; empty where nobody says one
     * and none is usual.
     */
    public OptionalDouble number(String name) {
        if (said(name) instanceof Double number) {
            return OptionalDouble.of(number);
        }
        return table.find(name).map(this::usual).orElse(OptionalDouble.empty());
    }

    /** The number that goes without saying under a key, be it of the object or of one nested in it. */
    public OptionalDouble usual(KeySpec spec) {
        OptionalDouble follows = spec.usual().map(usual -> usual.of(this)).orElse(OptionalDouble.empty());
        return follows.isPresent() ? follows : spec.defaultNumber();
    }

    /**
     * The number under a key that the rules see to.
     *
     * @throws IllegalArgumentException if there is none
     */
    public double need(String name) {
        return number(name).orElseThrow(() -> new IllegalArgumentException("no number is known for " + name));
    }

    /** A number of thousandths, such as {@code mohm}, in the unit itself; as {@link #need}. */
    public double milli(String name) {
        return need(name) * MILLI;
    }

    /** The word under a key, or the usual one; empty where there is none. */
    public Optional<String> word(String name) {
        return said(name) instanceof String word
                ? Optional.of(word)
                : table.find(name).flatMap(KeySpec::defaultWord);
    }

    /** Whether a key holds {@code true}. */
    public boolean flag(String name) {
        return said(name) instanceof Boolean flag
                ? flag
                : table.find(name).flatMap(KeySpec::defaultFlag).orElse(false);
    }

    /** The nested object under a key, with what is usual filled in; empty where nobody says one. */
    public Optional<Keys> group(String name) {
        return said(name) instanceof Keys keys
                ? Optional.of(table.find(name)
                        .filter(spec -> spec.type() instanceof KeySpec.GroupType)
                        .map(spec -> filled(keys, ((KeySpec.GroupType) spec.type()).keys()))
                        .orElse(keys))
                : Optional.empty();
    }

    private Keys filled(Keys keys, List<KeySpec> specs) {
        Map<String, Object> filled = new LinkedHashMap<>();
        for (KeySpec spec : specs) {
            Object written = keys.values().get(spec.name());
            OptionalDouble usual = usual(spec);
            if (written != null) {
                filled.put(spec.name(), written);
            } else if (usual.isPresent()) {
                filled.put(spec.name(), usual.getAsDouble());
            }
        }
        return new Keys(filled);
    }

    /**
     * Every value that holds, in the order of the table: flags that are set, and nothing of what other
     * tools left.
     */
    public Keys all() {
        Map<String, Object> all = new LinkedHashMap<>();
        for (KeySpec spec : table.specs()) {
            value(spec).ifPresent(value -> all.put(spec.name(), value));
        }
        return new Keys(all);
    }

    private Optional<Object> value(KeySpec spec) {
        KeySpec.Type type = spec.type();
        if (type instanceof KeySpec.NumberType) {
            OptionalDouble number = number(spec.name());
            return number.isPresent() ? Optional.of(number.getAsDouble()) : Optional.empty();
        } else if (type instanceof KeySpec.FlagType) {
            return flag(spec.name()) ? Optional.of(true) : Optional.empty();
        } else if (type instanceof KeySpec.GroupType) {
            return group(spec.name()).map(Object.class::cast);
        } else if (type instanceof KeySpec.ForeignType) {
            return Optional.empty();
        }
        return word(spec.name()).map(Object.class::cast);
    }

    private Object said(String name) {
        Object value = own.values().get(name);
        if (value != null) {
            return value;
        }
        value = isHidden(name) ? null : model.values().get(name);
        return value != null ? value : around.values().get(name);
    }

    /** Whether what the model says under a key falls with another that the object says itself. */
    private boolean isHidden(String name) {
        return table.find(name).flatMap(KeySpec::fallsWith).filter(own::has).isPresent();
    }
}
