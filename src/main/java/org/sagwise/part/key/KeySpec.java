package org.sagwise.part.key;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What one key of a scenario file may hold. The tables of these are the only place that knows the
 * names, units, ranges and defaults of the format: reader, writer, schema test and property sheet
 * all ask them, and so does the catalogue, whose entries speak in the same keys.
 *
 * @param name the key as written; its ending says the unit
 * @param type what kind of value it holds
 * @param need whether it must be there
 * @param tells whether it is about the make of a part, and so may stand in the catalogue, or about
 *     this one piece
 * @param fallsWith another key: what a model says here holds only while the part does not say that
 * @param usual what follows from the other values where nobody says a number
 */
public record KeySpec(
        String name, Type type, Need need, Tells tells, Optional<String> fallsWith, Optional<Usual> usual) {

    public KeySpec(String name, Type type, Need need) {
        this(name, type, need, Tells.MAKE, Optional.empty(), Optional.empty());
    }

    /** What a key is about. */
    public enum Tells {
        /** Alike for all of a model. */
        MAKE,
        /** This one piece: its state, what became of it, which model it is. */
        PIECE
    }

    /** What a number is where nobody says it. */
    @FunctionalInterface
    public interface Usual {
        OptionalDouble of(EffectiveKeys others);
    }

    /** The same key, about one piece and not about its make. */
    public KeySpec ofPiece() {
        return new KeySpec(name, type, need, Tells.PIECE, fallsWith, usual);
    }

    /** The same key, whose value in a model holds only while the part does not say another. */
    public KeySpec fallsWith(String other) {
        return new KeySpec(name, type, need, tells, Optional.of(other), usual);
    }

    /** The same key with a number that follows from the others. */
    public KeySpec usually(Usual follows) {
        return new KeySpec(name, type, need, tells, fallsWith, Optional.of(follows));
    }

    /** The number that goes without saying by the table itself. */
    public OptionalDouble defaultNumber() {
        return type instanceof NumberType number && number.defaultValue().isPresent()
                ? OptionalDouble.of(number.defaultValue().get())
                : OptionalDouble.empty();
    }

    /** The word that goes without saying. */
    public Optional<String> defaultWord() {
        return type instanceof ChoiceType choice ? choice.defaultValue() : Optional.empty();
    }

    /** What a flag is that nobody set. */
    public Optional<Boolean> defaultFlag() {
        return type instanceof FlagType flag ? flag.defaultValue() : Optional.empty();
    }

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
    public record GroupType(List<KeySpec> keys, List<KeyRule> rules) implements Type {}

    /** Data of other tools, kept and not read. */
    public record ForeignType() implements Type {}

    /** A nested object with these keys, and data of other tools. */
    public static GroupType group(KeySpec... keys) {
        List<KeySpec> all = new ArrayList<>(List.of(keys));
        all.add(FOREIGN);
        return new GroupType(all, List.of());
    }

    /** A nested object whose keys hold to rules. */
    public static GroupType group(List<KeyRule> rules, KeySpec... keys) {
        return new GroupType(group(keys).keys(), rules);
    }

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

    public static NumberType whole(double least, double most, double defaultValue) {
        return new NumberType(least, most, Bound.INCLUDED, Grain.WHOLE, Optional.of(defaultValue));
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
