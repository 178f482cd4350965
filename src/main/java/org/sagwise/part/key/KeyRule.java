package org.sagwise.part.key;

import java.util.List;

/** What holds among several keys of one object. */
public sealed interface KeyRule {

    /** One of these must be there, and no other of them. */
    record ExactlyOne(List<String> names) implements KeyRule {}

    /** Without a model one of these must be there, with one it may; never two of them. */
    record OneOrModel(List<String> names) implements KeyRule {}

    /** Both are there, or neither. */
    record Together(String one, String other) implements KeyRule {}

    /** Where both are there, the first is the smaller. */
    record Ordered(String low, String high) implements KeyRule {}

    /** Where both are there, the first is the smaller; holds for what the catalogue says alone. */
    record OrderedInCatalogue(String low, String high) implements KeyRule {}

    /** Without a model the part must say these itself, and a model must. */
    record ModelOr(List<String> names) implements KeyRule {}

    static KeyRule exactlyOne(String... names) {
        return new ExactlyOne(List.of(names));
    }

    static KeyRule oneOrModel(String... names) {
        return new OneOrModel(List.of(names));
    }

    static KeyRule modelOr(String... names) {
        return new ModelOr(List.of(names));
    }
}
