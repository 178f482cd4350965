package org.sagwise.part.key;

import java.util.List;
import java.util.Optional;

/**
 * What one key of a scenario file may hold. The tables of these are the only place that knows the
 * names, units, ranges and defaults of the format: reader, writer, schema test and property sheet
 * all ask them.
 *
 * @param name the key as written; its ending says the unit
 * @param type what kind of value it holds
 * @param need whether it must be there
 */
public record KeySpec(String name, Type type, Need need) {

    /**
     * Data of other tools; every object of a file may hold it but a place, whose x is a distance.
     */
    public static final KeySpec FOREIGN = optional(Keys.FOREIGN, new ForeignType());

    /** Whether a key must be there. Rules that span several keys stand apart. */
    public enum Need {
        REQUIRED,
        OPTIONAL
    }

    /** The kinds of value a key can hold. */
    public sealed interface Type {}

    /**
     * A number.
     *
     * @param least smallest value allowed
     * @param most largest value that is not absurd
     * @param bound whether {@code least} itself is allowed
     * @param grain whether only whole numbers make sense
     * @param defaultValue what holds if the key is absent; empty where absence means something else
     */
    public record NumberType(double least, double most, Bound bound, Grain grain, Optional<Double> defaultValue)
            implements Type {
        public boolean allows(double value) {
            return !Double.isNaN(value)
                    && (bound == Bound.INCLUDED ? value >= least : value > least)
                    && value <= most
                    && (grain == Grain.ANY || value == Math.rint(value));
        }
    }

    /** Which numbers of a range make sense. */
    public enum Grain {
        ANY,
        WHOLE
    }

    /** Whether the lower end of a range belongs to it. */
    public enum Bound {
        INCLUDED,
        EXCLUDED
    }

    /**
     * Free text.
     *
     * @param longest most characters allowed
     */
    public record TextType(int longest) implements Type {

        /** As much of a text as is allowed. */
        public String cut(String text) {
            if (text.length() <= longest) {
                return text;
            }
            int end = Character.isHighSurrogate(text.charAt(longest - 1)) ? longest - 1 : longest;
            return text.substring(0, end);
        }
    }

    /**
     * One of a few words.
     *
     * @param choices the words, as written in a file
     * @param defaultValue what holds if the key is absent
     */
    public record ChoiceType(List<String> choices, Optional<String> defaultValue) implements Type {}

    /** Names an entry of the catalogue: a model of this part's kind, or an alloy. */
    public record CatalogueType(Shelf shelf) implements Type {}

    /** The families of the catalogue that a key can name. */
    public enum Shelf {
        MODEL,
        ALLOY
    }

    /** A terminal written {@code part.terminal}. */
    public record TerminalType() implements Type {}

    /** {@code true} or {@code false}. */
    public record FlagType(Optional<Boolean> defaultValue) implements Type {}

    /** A nested object. */
    public record GroupType(List<KeySpec> keys) implements Type {}

    /** Data of other tools, kept and not read. */
    public record ForeignType() implements Type {}

    public static KeySpec required(String name, Type type) {
        return new KeySpec(name, type, Need.REQUIRED);
    }

    public static KeySpec optional(String name, Type type) {
        return new KeySpec(name, type, Need.OPTIONAL);
    }

    /** A number from {@code least} (included) to {@code most} without a default of its own. */
    public static NumberType from(double least, double most) {
        return new NumberType(least, most, Bound.INCLUDED, Grain.ANY, Optional.empty());
    }

    /** A number above {@code least} up to {@code most} without a default of its own. */
    public static NumberType above(double least, double most) {
        return new NumberType(least, most, Bound.EXCLUDED, Grain.ANY, Optional.empty());
    }

    public static NumberType from(double least, double most, double defaultValue) {
        return new NumberType(least, most, Bound.INCLUDED, Grain.ANY, Optional.of(defaultValue));
    }

    public static NumberType whole(double least, double most) {
        return new NumberType(least, most, Bound.INCLUDED, Grain.WHOLE, Optional.empty());
    }

    public static ChoiceType choice(String... words) {
        return new ChoiceType(List.of(words), Optional.empty());
    }

    public static ChoiceType choiceElse(String defaultWord, String... words) {
        return new ChoiceType(List.of(words), Optional.of(defaultWord));
    }
}
