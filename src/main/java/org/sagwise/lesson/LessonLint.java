package org.sagwise.lesson;

import org.sagwise.part.Catalogue;
import org.sagwise.scenario.Draft;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.ProblemTexts;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioRules;
import org.sagwise.scenario.TerminalRef;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Tries a lesson out: plays it as its author solves it and lets the engine answer every number,
 * condition and placeholder in it.
 */
public final class LessonLint {

    private static final String TITLE = ".title";

    /** Finer than any {@code within} an author would write. */
    private static final int DIGITS = 5;

    private final Lesson lesson;
    private final Catalogue catalogue;
    private final Track track;
    private final Set<String> cautions;
    private final List<LessonFinding> findings = new ArrayList<>();
    private final Map<String, Scenario> named;

    private LessonLint(Lesson lesson, Catalogue catalogue) {
        this.lesson = lesson;
        this.catalogue = catalogue;
        this.cautions = knownCautions();
        named = lesson.scenarios(Locale.ENGLISH);
        track = Track.of(lesson, named);
    }

    /** Everything that is wrong with a lesson. */
    public static List<LessonFinding> check(Lesson lesson, Catalogue catalogue) {
        LessonLint lint = new LessonLint(lesson, catalogue);
        lint.findings.addAll(TeachingRules.check(lesson));
        lint.benches();
        if (lint.findings.stream().noneMatch(it -> it.problem() == LessonProblem.BROKEN_SOLUTION)) {
            lint.play();
        }
        return lint.findings;
    }

    private void add(String place, LessonProblem problem, String... details) {
        findings.add(LessonFinding.of(place, problem, details));
    }

    /** Benches that a solution or a derived bench breaks cannot be played on. */
    private void benches() {
        named.forEach((name, bench) -> sound("benches." + name, bench));
        for (int i = 0; i < lesson.steps().size(); i++) {
            Step step = lesson.steps().get(i);
            String place = "steps[" + i + "]";
            for (String name : step.head().bench().stream().toList()) {
                if (!named.containsKey(name)) {
                    add(place + ".bench", LessonProblem.UNKNOWN_BENCH, name);
                }
            }
            for (String name : step.head().beside().stream().toList()) {
                if (!named.containsKey(name)) {
                    add(place + ".beside", LessonProblem.UNKNOWN_BENCH, name);
                }
            }
            if (!step.solution().isEmpty()) {
                Scenario before = track.before().get(i);
                findings.addAll(MoveRules.check(place + ".solution", step.solution(), before));
                sound(place + ".solution", track.after().get(i));
            }
        }
    }

    private void sound(String place, Scenario bench) {
        for (Finding found : new ScenarioRules(catalogue).check(Draft.of(bench))) {
            add(
                    place,
                    LessonProblem.BROKEN_SOLUTION,
                    found.place() + ": " + ProblemTexts.sentence(found, Locale.ENGLISH));
        }
    }

    private void play() {
        Situation situation = Situation.of(named.get(lesson.first()), named, catalogue);
        for (int i = 0; i < lesson.steps().size(); i++) {
            Step step = lesson.steps().get(i);
            String place = "steps[" + i + "]";
            Situation before = situation.with(track.before().get(i));
            Situation after =
                    step.solution().isEmpty() ? before : situation.with(track.after().get(i));
            look(place, step, before);
            blanks(place, step, i, before, situation);
            if (step instanceof Step.Do task) {
                task(place, task, before, after);
            } else if (step instanceof Step.Measure measure) {
                measure(place, measure, before);
            } else if (step instanceof Step.Estimate estimate) {
                tell(place + ".reading", estimate.expected(), before);
            }
        }
    }

    private void look(String place, Step step, Situation before) {
        for (String id : step.head().look()) {
            boolean link =
                    before.scenario().links().stream()
                            .anyMatch(it -> it.id().filter(id::equals).isPresent());
            if (!link && before.scenario().part(id).isEmpty()) {
                add(place + ".look", LessonProblem.UNKNOWN_PART, id);
            }
        }
    }

    private void task(String place, Step.Do task, Situation before, Situation after) {
        if (task.until().stream().allMatch(it -> it.holds(before))) {
            add(place, LessonProblem.DONE_AT_START);
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
                add(at, LessonProblem.UNKNOWN_CAUTION, caution);
            } else if (stray.isPresent()) {
                add(at, LessonProblem.BAD_TERMINAL, stray.get().toString());
            } else if (!condition.holds(after)) {
                unsolved(at, condition, after);
            }
        }
    }

    /** A terminal that the bench does not have: it would be apart from everything for ever. */
    private static Optional<TerminalRef> stray(Condition condition, Scenario bench) {
        return condition.terminals().stream()
                .filter(
                        it ->
                                bench.part(it.part())
                                        .filter(part -> part.terminals().contains(it))
                                        .isEmpty())
                .findFirst();
    }

    private void unsolved(String place, Condition condition, Situation after) {
        if (condition instanceof Condition.ReadingIs reading) {
            tell(place, reading.ref(), after)
                    .ifPresent(value -> add(place, LessonProblem.NOT_SOLVED, rounded(value)));
        } else if (condition instanceof Condition.NothingGrave) {
            List<String> grave =
                    after.bench().cautions().stream()
                            .filter(it -> it.signal().isGrave())
                            .map(it -> it.id())
                            .toList();
            add(place, LessonProblem.NOT_SOLVED, String.join(", ", grave));
        } else {
            add(place, LessonProblem.NOT_MET);
        }
    }

    /** A number as an author would copy it into the lesson. */
    private static String rounded(double value) {
        return new BigDecimal(value)
                .round(new MathContext(DIGITS))
                .stripTrailingZeros()
                .toPlainString();
    }

    private void measure(String place, Step.Measure measure, Situation bench) {
        OptionalDouble value = tell(place + ".reading", measure.reading(), bench);
        if (value.isPresent() && !measure.around(measure.expected()).hold(value.getAsDouble())) {
            add(
                    place + ".is",
                    LessonProblem.UNEXPECTED_READING,
                    measure.reading().toString(),
                    rounded(value.getAsDouble()),
                    rounded(measure.expected()));
        }
    }

    private OptionalDouble tell(String place, ReadingRef ref, Situation situation) {
        OptionalDouble value = situation.read(ref);
        if (value.isEmpty()) {
            add(place, LessonProblem.READING_EMPTY, ref.toString());
        }
        return value;
    }

    /** Every placeholder of a step has a number when it is shown. */
    private void blanks(String place, Step step, int at, Situation before, Situation all) {
        for (StepTexts.Said said : StepTexts.of(step)) {
            Situation shown =
                    said.time() == StepTexts.Time.AT_STEP
                            ? before
                            : all.with(track.after().get(lookedAt(step, at)));
            for (String blank : Filling.blanks(said.text().en())) {
                String where = place + "." + said.key();
                Filling.ref(blank)
                        .ifPresentOrElse(
                                ref -> tell(where, ref, shown),
                                () -> add(where, LessonProblem.BAD_READING, blank));
            }
        }
    }

    /** Place of the step whose bench a reply speaks of. */
    private int lookedAt(Step step, int at) {
        boolean check = step instanceof Step.Choose choose && choose.role() == Step.Role.CHECK;
        return check ? at : Track.replyAt(lesson, at) - 1;
    }

    private static Set<String> knownCautions() {
        return ResourceBundle.getBundle("org.sagwise.texts.cautions", Locale.ENGLISH)
                .keySet()
                .stream()
                .filter(key -> key.endsWith(TITLE))
                .map(key -> key.substring(0, key.length() - TITLE.length()))
                .collect(Collectors.toUnmodifiableSet());
    }
}
