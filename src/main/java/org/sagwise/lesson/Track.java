package org.sagwise.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioRules;
import org.sagwise.scenario.edit.Edit;

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
     * @param rules moves that they refuse are left out
     */
    public static Track of(Lesson lesson, Map<String, Scenario> named, ScenarioRules rules) {
        List<Scenario> before = new ArrayList<>();
        List<Scenario> after = new ArrayList<>();
        Scenario bench = named.get(lesson.first());
        for (Step step : lesson.steps()) {
            Scenario kept = bench;
            bench = step.head()
                    .bench()
                    .map(name -> named.getOrDefault(name, kept))
                    .orElse(kept);
            before.add(bench);
            bench = Edit.made(step.solution(), bench, rules);
            after.add(bench);
        }
        return new Track(before, after);
    }

    /**
     * Place of the step at which a prediction is answered: when what it leads to has been done and
     * measured. A further change of the bench would make the answer speak of something else. Two predictions in a
     * row are answered together.
     */
    public static int replyAt(Lesson lesson, int prediction) {
        int at = prediction + 1;
        while (at < lesson.steps().size() && lesson.steps().get(at).predicts()) {
            at++;
        }
        while (at < lesson.steps().size() && lesson.steps().get(at) instanceof Step.Do) {
            at++;
        }
        while (at < lesson.steps().size() && lesson.steps().get(at) instanceof Step.Measure) {
            at++;
        }
        return at;
    }
}
