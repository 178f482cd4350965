package org.sagwise.lesson;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.stream.Collectors;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/** Looks at tasks: open at their start, done by their solution, and of things that there are. */
final class TaskLint {

    private static final String TITLE = ".title";

    private final Set<String> cautions = knownCautions();
    private final LintReport report;

    TaskLint(LintReport report) {
        this.report = report;
    }

    void check(String place, Step.Do task, Situation before, Situation after) {
        if (task.until().stream().allMatch(it -> it.holds(before))) {
            report.add(place, LessonProblem.DONE_AT_START);
        }
        for (int i = 0; i < task.until().size(); i++) {
            Condition condition = task.until().get(i);
            String at = place + ".until[" + i + "]";
            String caution = "";
            if (condition instanceof Condition.CautionShown shown) {
                caution = shown.id();
            } else if (condition instanceof Condition.CautionGone gone) {
                caution = gone.id();
            }
            Optional<TerminalRef> stray = stray(condition, after.scenario());
            if (!caution.isEmpty() && !cautions.contains(caution)) {
                report.add(at, LessonProblem.UNKNOWN_CAUTION, caution);
            } else if (stray.isPresent()) {
                report.add(at, LessonProblem.BAD_TERMINAL, stray.get().toString());
            } else if (!condition.holds(after)) {
                unsolved(at, condition, after);
            }
        }
    }

    /** A terminal that the bench does not have: it would be apart from everything for ever. */
    private static Optional<TerminalRef> stray(Condition condition, Scenario bench) {
        return condition.terminals().stream()
                .filter(it -> bench.part(it.part())
                        .filter(part -> part.terminals().contains(it))
                        .isEmpty())
                .findFirst();
    }

    private void unsolved(String place, Condition condition, Situation after) {
        if (condition instanceof Condition.ReadingIs reading) {
            report.tell(place, reading.ref(), after)
                    .ifPresent(value -> report.add(place, LessonProblem.NOT_SOLVED, LintReport.rounded(value)));
        } else if (condition instanceof Condition.NothingGrave) {
            List<String> grave = after.bench().cautions().stream()
                    .filter(it -> it.signal().isGrave())
                    .map(it -> it.id())
                    .toList();
            report.add(place, LessonProblem.NOT_SOLVED, String.join(", ", grave));
        } else {
            report.add(place, LessonProblem.NOT_MET);
        }
    }

    private static Set<String> knownCautions() {
        return ResourceBundle.getBundle("org.sagwise.texts.cautions", Locale.ENGLISH).keySet().stream()
                .filter(key -> key.endsWith(TITLE))
                .map(key -> key.substring(0, key.length() - TITLE.length()))
                .collect(Collectors.toUnmodifiableSet());
    }
}
