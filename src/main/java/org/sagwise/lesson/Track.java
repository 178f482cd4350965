package org.sagwise.lesson;

import org.sagwise.scenario.Scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The benches of a lesson when every step is solved as its author solves it: what "show me" shows
 * and what lint tries.
 *
 * @param before the bench with which each step begins
 * @param after the bench with which each step ends
 */
public record Track(List<Scenario> before, List<Scenario> after) {

    public Track {
        before = List.copyOf(before);
        after = List.copyOf(after);
    }

    /**
     * @param named the lesson's benches by name
     */
    public static Track of(Lesson lesson, Map<String, Scenario> named) {
        List<Scenario> before = new ArrayList<>();
        List<Scenario> after = new ArrayList<>();
        Scenario bench = named.get(lesson.first());
        for (Step step : lesson.steps()) {
            Scenario kept = bench;
            bench = step.head().bench().map(name -> named.getOrDefault(name, kept)).orElse(kept);
            before.add(bench);
            bench = Move.all(step.solution(), bench);
            after.add(bench);
        }
        return new Track(before, after);
    }

    /**
     * Place of the step in whose place replies to a prediction are given: the first after it that
     * looks at the bench no more.
     */
    public static int replyAt(Lesson lesson, int prediction) {
        int at = prediction + 1;
        while (at < lesson.steps().size() && lesson.steps().get(at).isObservation()) {
            at++;
        }
        return at;
    }
}
