package org.sagwise.lesson;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.sagwise.part.Catalogue;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioRules;

/**
 * Tries a lesson out: plays it as its author solves it and lets the engine answer every number,
 * condition and placeholder in it.
 */
public final class LessonLint {

    private final Lesson lesson;
    private final Catalogue catalogue;
    private final ScenarioRules rules;
    private final Track track;
    private final Map<String, Scenario> named;
    private final LintReport report = new LintReport();

    private LessonLint(Lesson lesson, Catalogue catalogue) {
        this.lesson = lesson;
        this.catalogue = catalogue;
        named = lesson.scenarios(Locale.ENGLISH);
        rules = new ScenarioRules(catalogue);
        track = Track.of(lesson, named, rules);
    }

    /** Everything that is wrong with a lesson. */
    public static List<Finding> check(Lesson lesson, Catalogue catalogue) {
        return new LessonLint(lesson, catalogue).check();
    }

    private List<Finding> check() {
        report.addAll(TeachingRules.check(lesson));
        report.addAll(OptionRules.check(lesson));
        report.addAll(Pacing.check(lesson));
        report.addAll(PredictionLint.check(lesson, track, named));
        report.addAll(MoveLint.check(lesson, track, rules));
        play();
        core();
        return report.findings();
    }

    /** What may be skipped must not leave the rest on a bench on which it does not work. */
    private void core() {
        List<Step> kept = lesson.core();
        if (kept.isEmpty() || kept.size() == lesson.steps().size()) {
            return;
        }
        LessonLint rest = new LessonLint(lesson.withSteps(kept), catalogue);
        rest.play();
        List<String> whole = report.findings().stream().map(LessonLint::told).toList();
        rest.report.findings().stream()
                .map(LessonLint::told)
                .filter(told -> !whole.contains(told))
                .findFirst()
                .ifPresent(told -> report.add("steps", LessonProblem.SKIP_BREAKS, told));
    }

    private static String told(Finding finding) {
        return finding.sentence(Locale.ENGLISH);
    }

    private void play() {
        TaskLint tasks = new TaskLint(report);
        Situation situation = Situation.of(named.get(lesson.first()), named, catalogue);
        for (int i = 0; i < lesson.steps().size(); i++) {
            Step step = lesson.steps().get(i);
            String place = "steps[" + i + "]";
            Situation before = situation.with(track.before().get(i));
            Situation after = step.solution().isEmpty()
                    ? before
                    : situation.with(track.after().get(i));
            benches(place, step.head());
            look(place, step, before);
            blanks(place, step, i, before, situation);
            if (step instanceof Step.Do task) {
                tasks.check(place, task, before, after);
                JointLint.check(place, task, before, rules, report);
            } else if (step instanceof Step.Measure measure) {
                measure(place, measure, before);
            } else if (step instanceof Step.Estimate estimate) {
                report.tell(place + ".reading", estimate.expected(), before);
            }
        }
    }

    private void measure(String place, Step.Measure measure, Situation bench) {
        OptionalDouble value = report.tell(place + ".reading", measure.reading(), bench);
        if (value.isPresent() && !measure.around(measure.expected()).hold(value.getAsDouble())) {
            report.add(
                    place + ".is",
                    LessonProblem.UNEXPECTED_READING,
                    measure.reading().toString(),
                    LintReport.rounded(value.getAsDouble()),
                    LintReport.rounded(measure.expected()));
        }
    }

    private void benches(String place, Step.Head head) {
        unknownBench(place + ".bench", head.bench());
        unknownBench(place + ".beside", head.beside());
    }

    private void unknownBench(String place, Optional<String> bench) {
        bench.filter(name -> !named.containsKey(name))
                .ifPresent(name -> report.add(place, LessonProblem.UNKNOWN_BENCH, name));
    }

    private void look(String place, Step step, Situation before) {
        for (String id : step.head().look()) {
            boolean link = before.scenario().links().stream()
                    .anyMatch(it -> it.id().filter(id::equals).isPresent());
            if (!link && before.scenario().part(id).isEmpty()) {
                Meant.thing(id, before.scenario())
                        .ifPresentOrElse(
                                near -> report.add(place + ".look", LessonProblem.PART_MISSPELT, id, near),
                                () -> report.add(place + ".look", LessonProblem.UNKNOWN_PART, id));
            }
        }
    }

    /** Every placeholder of a step has a number when it is shown. */
    private void blanks(String place, Step step, int at, Situation before, Situation all) {
        for (StepTexts.Said said : StepTexts.of(step)) {
            Situation shown = said.time() == StepTexts.Time.AT_STEP
                    ? before
                    : all.with(track.after().get(lookedAt(step, at)));
            for (String blank : Filling.blanks(said.text().english())) {
                String where = place + "." + said.key();
                Filling.ref(blank)
                        .ifPresentOrElse(
                                ref -> report.tell(where, ref, shown),
                                () -> report.add(where, LessonProblem.BAD_READING, blank));
            }
        }
    }

    /** Place of the step whose bench a reply speaks of. */
    private int lookedAt(Step step, int at) {
        boolean check = step instanceof Step.Choose choose && choose.role() == Step.Role.CHECK;
        return check ? at : Track.replyAt(lesson, at) - 1;
    }
}
