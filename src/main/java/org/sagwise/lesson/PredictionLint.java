package org.sagwise.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;

/** A prediction is of something not seen yet, and the bench answers it. */
final class PredictionLint {

    private static final Set<String> SUMS = Set.of("internal_ohm", "load_fraction", "efficiency");

    private final Lesson lesson;
    private final Track track;
    private final Map<String, Scenario> named;
    private final List<Finding> findings = new ArrayList<>();

    private PredictionLint(Lesson lesson, Track track, Map<String, Scenario> named) {
        this.lesson = lesson;
        this.track = track;
        this.named = named;
    }

    static List<Finding> check(Lesson lesson, Track track, Map<String, Scenario> named) {
        PredictionLint lint = new PredictionLint(lesson, track, named);
        for (int i = 0; i < lesson.steps().size(); i++) {
            Step step = lesson.steps().get(i);
            if (step.predicts() && !isSum(step)) {
                lint.answered(i);
                lint.unseen(i, step);
            }
        }
        return lint.findings;
    }

    /** Worked out of readings seen before; it stands on no bench itself. */
    private static boolean isSum(Step step) {
        return step instanceof Step.Estimate estimate
                && SUMS.contains(estimate.expected().quantity());
    }

    /** Between a prediction and what is told about it, the bench is worked on or read. */
    private void answered(int at) {
        if (lesson.steps().subList(at, Track.replyAt(lesson, at)).stream().noneMatch(Step::isObservation)) {
            findings.add(Finding.of("steps[" + at + "]", LessonProblem.NOTHING_SHOWS_IT));
        }
    }

    /** No bench on which somebody has worked before shows what is asked. */
    private void unseen(int at, Step step) {
        for (ReadingRef ref : asked(step)) {
            Scenario bench = ref.bench().map(named::get).orElse(track.before().get(at));
            if (bench == null || ref.when() == When.RUN) {
                continue;
            }
            for (int before = 0; before < at; before++) {
                if (lesson.steps().get(before).isObservation() && shows(before, bench)) {
                    findings.add(Finding.of(
                            "steps[" + at + "]",
                            LessonProblem.SEEN_BEFORE,
                            ref.toString(),
                            lesson.steps().get(before).id()));
                    return;
                }
            }
        }
    }

    private boolean shows(int step, Scenario bench) {
        Optional<Scenario> beside = lesson.steps().get(step).head().beside().map(named::get);
        return isSame(track.before().get(step), bench)
                || isSame(track.after().get(step), bench)
                || beside.filter(it -> isSame(it, bench)).isPresent();
    }

    private static boolean isSame(Scenario one, Scenario other) {
        return plain(one).equals(plain(other));
    }

    private static Scenario plain(Scenario scenario) {
        return scenario.withTitle("").with(Press.RELEASED).withProbes(Optional.empty());
    }

    /** The readings that the right answer consists of. */
    private static List<ReadingRef> asked(Step step) {
        if (step instanceof Step.Estimate estimate) {
            return List.of(estimate.expected());
        }
        Step.Choose choose = (Step.Choose) step;
        return Filling.blanks(choose.choices().get(choose.right()).text().english()).stream()
                .flatMap(blank -> Filling.ref(blank).stream())
                .toList();
    }
}
