package org.sagwise.circuit;

import java.util.List;

/**
 * Sources that drive current through one another with no load between them.
 *
 * @param kind how they stand
 * @param turned of reversed sources those that stand the other way round than the rest, of one
 *     against one the later in the file; empty otherwise
 * @param members every source that takes part, in file order
 */
public record Conflict(Kind kind, List<Branch> turned, List<Branch> members) {

    public Conflict {
        turned = List.copyOf(turned);
        members = List.copyOf(members);
    }

    /** How sources can stand against each other. */
    public enum Kind {
        /** The ends of one source or of a whole row are joined by metal. */
        SHORTED,
        /** Some stand the other way round than those beside them. */
        REVERSED,
        /** Ways side by side pass different numbers of sources. */
        UNEQUAL_ROWS
    }

    /** The members that are not turned. */
    public List<Branch> others() {
        return members.stream().filter(member -> !turned.contains(member)).toList();
    }
}
