package org.sagwise.part;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The catalogue entries of one kind, in the order of the catalogue file.
 *
 * @param byId the entries by their ids, in order
 */
public record Entries<T extends CatalogueEntry>(Map<String, T> byId) {

    public Entries {
        byId = Collections.unmodifiableMap(new LinkedHashMap<>(byId));
        byId.forEach(
                (id, entry) -> {
                    if (!id.equals(entry.id())) {
                        throw new IllegalArgumentException(
                                "entry " + entry.id() + " is filed under " + id);
                    }
                });
    }

    /**
     * Files the entries by id.
     *
     * @throws IllegalArgumentException when two share an id
     */
    public static <T extends CatalogueEntry> Entries<T> of(Collection<? extends T> entries) {
        Map<String, T> byId = new LinkedHashMap<>();
        for (T entry : entries) {
            if (byId.put(entry.id(), entry) != null) {
                throw new IllegalArgumentException("two entries have the id " + entry.id());
            }
        }
        return new Entries<>(byId);
    }

    /** The entry with this id, empty where there is none. */
    public Optional<T> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** Known ids that somebody who wrote {@code id} may have meant, nearest first. */
    public List<String> nearMisses(String id) {
        return NearMiss.of(id, byId.keySet());
    }

    /** All ids, in order. */
    public Set<String> ids() {
        return byId.keySet();
    }

    /** All entries, in order. */
    public Collection<T> all() {
        return byId.values();
    }

    /** How many entries there are. */
    public int size() {
        return byId.size();
    }
}
