package org.sagwise.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.sagwise.part.Catalogue;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioRules;
import org.sagwise.scenario.edit.Edit;

/** Finds moves that cannot be made of the bench on which they are to be made. */
public final class MoveLint {

    private MoveLint() {}

    /**
     * @param place of the list of moves, as in {@code steps[2].solution}
     * @param moves done one after the other, those left out that cannot be made
     * @param before the bench before the first of them
     */
    public static List<Finding> check(String place, List<Edit> moves, Scenario before, ScenarioRules rules) {
        List<Finding> findings = new ArrayList<>();
        Scenario bench = before;
        for (int i = 0; i < moves.size(); i++) {
            String at = place + "[" + i + "]";
            moves.get(i).refusal(bench, rules).stream()
                    .map(found ->
                            (found.place().isEmpty() ? "" : found.place() + ": ") + found.sentence(Locale.ENGLISH))
                    .forEach(why -> findings.add(Finding.of(at, LessonProblem.MOVE_REFUSED, why)));
            bench = Edit.made(moves.subList(i, i + 1), bench, rules);
        }
        return findings;
    }

    /** Moves of solutions that cannot be made. */
    public static List<Finding> check(Lesson lesson, Catalogue catalogue) {
        ScenarioRules rules = new ScenarioRules(catalogue);
        return check(lesson, Track.of(lesson, lesson.scenarios(Locale.ENGLISH), rules), rules);
    }

    static List<Finding> check(Lesson lesson, Track track, ScenarioRules rules) {
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < lesson.steps().size(); i++) {
            List<Edit> moves = lesson.steps().get(i).solution();
            findings.addAll(
                    check("steps[" + i + "].solution", moves, track.before().get(i), rules));
        }
        return findings;
    }
}
