package org.sagwise.part;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/** The catalogue entries of one kind, in the order of the catalogue file. Unchangeable. */
public final class Entries<T extends CatalogueEntry> {

    private final Object lock = new Object();
    private Supplier<? extends Collection<? extends T>> waiting;
    private volatile Map<String, T> byId;

    private Entries(Supplier<? extends Collection<? extends T>> waiting) {
        this.waiting = waiting;
    }

    /**
     * Files the entries by id.
     *
     * @throws IllegalArgumentException when two share an id
     */
    public static <T extends CatalogueEntry> Entries<T> of(Collection<? extends T> entries) {
        Entries<T> filed = new Entries<>(() -> entries);
        filed.byId();
        return filed;
    }

    /** No entries at all. */
    static <T extends CatalogueEntry> Entries<T> none() {
        return of(List.of());
    }

    /**
     * Entries that are fetched when somebody first asks for one, once, from any thread: most
     * commands need few kinds of part. When fetching throws, so does the question, and the next one
     * fetches again.
     */
    public static <T extends CatalogueEntry> Entries<T> whenAsked(Supplier<? extends Collection<? extends T>> fetch) {
        return new Entries<>(fetch);
    }

    /** All entries by their ids, in order. */
    public Map<String, T> byId() {
        Map<String, T> known = byId;
        if (known != null) {
            return known;
        }
        synchronized (lock) {
            if (byId == null) {
                byId = filed(waiting.get());
                waiting = null;
            }
            return byId;
        }
    }

    private static <T extends CatalogueEntry> Map<String, T> filed(Collection<? extends T> entries) {
        Map<String, T> filed = new LinkedHashMap<>();
        for (T entry : entries) {
            if (filed.put(entry.id(), entry) != null) {
                throw new IllegalArgumentException("two entries have the id " + entry.id());
            }
        }
        return Collections.unmodifiableMap(filed);
    }

    /** The entry with this id, empty where there is none. */
    public Optional<T> find(String id) {
        return Optional.ofNullable(byId().get(id));
    }

    /** All ids, in order. */
    public Set<String> ids() {
        return byId().keySet();
    }

    /** All entries, in order. */
    public Collection<T> all() {
        return byId().values();
    }

    /** How many entries there are. */
    public int size() {
        return byId().size();
    }
}
