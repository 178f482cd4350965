package org.sagwise.picture.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;

/** A piece of circuit between two joints, built of parts in series and in parallel. */
sealed interface Branch {

    /** One part. */
    record Leaf(Strand strand) implements Branch {
        @Override
        public Branch reversed() {
            return new Leaf(strand.reversed());
        }

        @Override
        public Stream<Strand> strands() {
            return Stream.of(strand);
        }
    }

    /** One after the other, in order of the way. */
    record Series(List<Branch> branches) implements Branch {
        @Override
        public Branch reversed() {
            List<Branch> backward =
                    new ArrayList<>(branches.stream().map(Branch::reversed).toList());
            Collections.reverse(backward);
            return new Series(backward);
        }

        @Override
        public Stream<Strand> strands() {
            return branches.stream().flatMap(Branch::strands);
        }
    }

    /** Side by side. */
    record Parallel(List<Branch> branches) implements Branch {
        @Override
        public Branch reversed() {
            return new Parallel(branches.stream().map(Branch::reversed).toList());
        }

        @Override
        public Stream<Strand> strands() {
            return branches.stream().flatMap(Branch::strands);
        }
    }

    /** The same piece from its other end. */
    Branch reversed();

    /** Its parts, each the way it is passed. */
    Stream<Strand> strands();

    default long count(Strand.Role role) {
        return strands().filter(strand -> strand.role() == role).count();
    }

    default boolean has(Strand.Role role) {
        return count(role) > 0;
    }

    /** Sources that drive along minus sources that drive against. */
    default int drive() {
        return strands().mapToInt(Strand::drive).sum();
    }

    static Branch inSeries(Branch first, Branch second) {
        List<Branch> all = new ArrayList<>(seriesOf(first));
        all.addAll(seriesOf(second));
        return new Series(all);
    }

    static Branch inParallel(Branch first, Branch second) {
        List<Branch> all = new ArrayList<>(parallelOf(first));
        all.addAll(parallelOf(second));
        return new Parallel(all);
    }

    /** The members of a series; anything else is a series of itself alone. */
    static List<Branch> seriesOf(Branch branch) {
        return branch instanceof Series series ? series.branches() : List.of(branch);
    }

    /** The members that stand side by side; anything else stands alone. */
    static List<Branch> parallelOf(Branch branch) {
        return branch instanceof Parallel parallel ? parallel.branches() : List.of(branch);
    }
}
