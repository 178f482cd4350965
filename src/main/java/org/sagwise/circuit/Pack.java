package org.sagwise.circuit;

import java.util.List;

/**
 * Sources that metal joins, directly or through one another.
 *
 * @param sources in file order
 * @param loops every closed way through sources alone can be put together from these
 */
public record Pack(List<Branch> sources, List<Loop> loops) {

    public Pack {
        sources = List.copyOf(sources);
        loops = List.copyOf(loops);
    }

    public boolean contains(String part) {
        return sources.stream().anyMatch(source -> source.part().equals(part));
    }

    /** Ids of the sources in file order. */
    public List<String> parts() {
        return sources.stream().map(Branch::part).toList();
    }
}
