package org.sagwise.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.sagwise.scenario.Scenario;

/**
 * The learner's benches: how each step was begun, and how it was left.
 *
 * @param entered the bench with which each step began
 * @param left the bench with which each step was left
 */
record Benches(List<Scenario> entered, List<Scenario> left) {

    Benches {
        entered = List.copyOf(entered);
        left = List.copyOf(left);
    }

    /** Nothing done yet: as the author means them. */
    static Benches of(Track track) {
        return new Benches(track.before(), track.after());
    }

    /** After going from one step to another. */
    Benches move(int from, Scenario leaving, int to, Scenario entering) {
        return new Benches(with(entered, to, entering), with(left, from, leaving));
    }

    private static List<Scenario> with(List<Scenario> all, int place, Scenario bench) {
        List<Scenario> changed = new ArrayList<>(all);
        changed.set(place, bench);
        return changed;
    }

    Benches map(UnaryOperator<Scenario> change) {
        return new Benches(
                entered.stream().map(change).toList(), left.stream().map(change).toList());
    }
}
