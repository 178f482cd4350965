package org.sagwise.lesson;

import java.util.Locale;
import java.util.Map;
import org.sagwise.part.Catalogue;
import org.sagwise.scenario.Draft;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.ProblemTexts;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioRules;

/**
 * Looks at the benches of a lesson, as they are named and as its solutions make them.
 *
 * @param named the benches by name
 * @param track the benches step by step
 */
record BenchLint(Lesson lesson, Catalogue catalogue, Map<String, Scenario> named, Track track, LintReport report) {

    /** Looks at all of them. */
    void check() {
        named.forEach((name, bench) -> sound("benches." + name, bench));
        for (int i = 0; i < lesson.steps().size(); i++) {
            Step step = lesson.steps().get(i);
            String place = "steps[" + i + "]";
            for (String name : step.head().bench().stream().toList()) {
                if (!named.containsKey(name)) {
                    report.add(place + ".bench", LessonProblem.UNKNOWN_BENCH, name);
                }
            }
            for (String name : step.head().beside().stream().toList()) {
                if (!named.containsKey(name)) {
                    report.add(place + ".beside", LessonProblem.UNKNOWN_BENCH, name);
                }
            }
            if (!step.solution().isEmpty()) {
                Scenario before = track.before().get(i);
                report.addAll(MoveRules.check(place + ".solution", step.solution(), before));
                sound(place + ".solution", track.after().get(i));
            }
        }
    }

    private void sound(String place, Scenario bench) {
        for (Finding found : new ScenarioRules(catalogue).check(Draft.of(bench))) {
            report.add(
                    place,
                    LessonProblem.BROKEN_SOLUTION,
                    found.place() + ": " + ProblemTexts.sentence(found, Locale.ENGLISH));
        }
    }
}
