package org.sagwise.interaction;

import java.util.Collection;
import java.util.Set;

/**
 * What on the bench is meant: parts, links and notes that are picked out.
 *
 * @param parts ids of parts
 * @param links places of links in the scenario
 * @param notes places of notes in the scenario
 */
public record Selection(Set<String> parts, Set<Integer> links, Set<Integer> notes) {

    public static final Selection NOTHING = new Selection(Set.of(), Set.of(), Set.of());

    public Selection {
        parts = Set.copyOf(parts);
        links = Set.copyOf(links);
        notes = Set.copyOf(notes);
    }

    public static Selection part(String id) {
        return of(Set.of(id), Set.of());
    }

    public static Selection link(int index) {
        return of(Set.of(), Set.of(index));
    }

    public static Selection note(int index) {
        return new Selection(Set.of(), Set.of(), Set.of(index));
    }

    public static Selection of(Collection<String> parts, Collection<Integer> links) {
        return new Selection(Set.copyOf(parts), Set.copyOf(links), Set.of());
    }

    /** Whether everything that another one means is meant by this one too. */
    public boolean covers(Selection other) {
        return parts.containsAll(other.parts) && links.containsAll(other.links) && notes.containsAll(other.notes);
    }

    public boolean isNothing() {
        return parts.isEmpty() && links.isEmpty() && notes.isEmpty();
    }

    /** Whether it is exactly one thing. */
    public boolean isOne() {
        return parts.size() + links.size() + notes.size() == 1;
    }
}
