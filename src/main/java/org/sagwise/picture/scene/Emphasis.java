package org.sagwise.picture.scene;

import java.util.Set;

/**
 * What stands out on the bench and on the staircase.
 *
 * @param chosen ids of parts that are selected or focused
 * @param pointed ids of parts that are pointed at, here or on the staircase
 * @param links places of links that are pointed at or selected
 * @param notes places of notes that are pointed at or selected
 */
public record Emphasis(Set<String> chosen, Set<String> pointed, Set<Integer> links, Set<Integer> notes) {

    public static final Emphasis NONE = new Emphasis(Set.of(), Set.of(), Set.of(), Set.of());

    public Emphasis {
        chosen = Set.copyOf(chosen);
        pointed = Set.copyOf(pointed);
        links = Set.copyOf(links);
        notes = Set.copyOf(notes);
    }

    /** Parts and links that are pointed at. */
    public static Emphasis pointingAt(Set<String> parts, Set<Integer> links) {
        return new Emphasis(Set.of(), parts, links, Set.of());
    }

    /** Parts that are selected. */
    public static Emphasis choosing(Set<String> parts) {
        return new Emphasis(parts, Set.of(), Set.of(), Set.of());
    }

    public boolean isOn(String part) {
        return chosen.contains(part) || pointed.contains(part);
    }
}
