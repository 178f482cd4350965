package org.sagwise.picture.layout;

import java.util.ArrayList;
import java.util.List;

/**
 * Parts that fit neither series nor parallel, set out in rows: sources first, for want of a better
 * order.
 *
 * @param strands the parts
 */
record Tableau(List<Strand> strands) {

    /** Rows one below the other, each of parts side by side. */
    Branch branch() {
        List<Strand> ordered = new ArrayList<>();
        for (Strand.Role role : Strand.Role.values()) {
            strands.stream().filter(strand -> strand.role() == role).forEach(ordered::add);
        }
        int columns = (int) Math.ceil(Math.sqrt(1.5 * ordered.size()));
        List<Branch> rows = new ArrayList<>();
        for (int i = 0; i < ordered.size(); i += columns) {
            List<Strand> row = ordered.subList(i, Math.min(ordered.size(), i + columns));
            rows.add(new Branch.Parallel(row.stream().map(Tableau::standing).toList()));
        }
        return new Branch.Series(rows);
    }

    /** Laid out downward, a source passed from plus to minus stands upright. */
    private static Branch standing(Strand strand) {
        Branch leaf = new Branch.Leaf(strand);
        return strand.drive() > 0 ? leaf.reversed() : leaf;
    }
}
