package org.sagwise.lesson;

import org.sagwise.lesson.Answers.State;
import org.sagwise.part.Catalogue;
import org.sagwise.part.LocalText;
import org.sagwise.scenario.Scenario;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A learner somewhere in a lesson. Immutable: each thing the learner does gives another one. There
 * is always a way on: a step that does not come out right can be shown, and a shown step is left
 * with its bench as the author meant it.
 */
public final class LessonPlayer {

    private final Lesson lesson;
    private final Locale locale;
    private final Map<String, Scenario> named;
    private final Track track;
    private final int at;
    private final List<Answers> answers;
    private final List<Scenario> entered;
    private final List<Scenario> left;
    private final Situation situation;

    private LessonPlayer(
            LessonPlayer before,
            int at,
            List<Answers> answers,
            List<Scenario> entered,
            List<Scenario> left,
            Situation situation) {
        this.lesson = before.lesson;
        this.locale = before.locale;
        this.named = before.named;
        this.track = before.track;
        this.at = at;
        this.answers = List.copyOf(answers);
        this.entered = List.copyOf(entered);
        this.left = List.copyOf(left);
        this.situation = situation;
    }

    private LessonPlayer(Lesson lesson, Catalogue catalogue, Locale locale) {
        this.lesson = lesson;
        this.locale = locale;
        named = lesson.scenarios(locale);
        track = Track.of(lesson, named);
        at = 0;
        answers = Collections.nCopies(lesson.steps().size(), Answers.NONE);
        entered = track.before();
        left = track.after();
        situation = Situation.of(entered.get(0), named, catalogue);
    }

    /** A learner at the beginning of a lesson. */
    public static LessonPlayer begin(Lesson lesson, Catalogue catalogue, Locale locale) {
        return new LessonPlayer(lesson, catalogue, locale);
    }

    /**
     * A learner who comes back: at the step that was reached, with what was done before it, and its
     * bench as its author means it.
     *
     * @param reached place of the step
     * @param given what was done in each step; one that does not fit this lesson begins it anew
     */
    public static LessonPlayer resume(
            Lesson lesson, Catalogue catalogue, Locale locale, int reached, List<Answers> given) {
        LessonPlayer fresh = begin(lesson, catalogue, locale);
        boolean fits =
                given.size() == lesson.steps().size()
                        && reached >= 0
                        && reached < given.size()
                        && fits(lesson, given);
        return fits
                ? new LessonPlayer(fresh, 0, given, fresh.entered, fresh.left, fresh.situation)
                        .jump(reached)
                : fresh;
    }

    private static boolean fits(Lesson lesson, List<Answers> given) {
        for (int i = 0; i < given.size(); i++) {
            int choices =
                    lesson.steps().get(i) instanceof Step.Choose choose
                            ? choose.choices().size()
                            : 0;
            if (given.get(i).choice().orElse(-1) >= choices) {
                return false;
            }
        }
        return true;
    }

    public Lesson lesson() {
        return lesson;
    }

    /** Place of the step, from 0. */
    public int at() {
        return at;
    }

    public Step step() {
        return lesson.steps().get(at);
    }

    /** What the learner has done in this step. */
    public Answers answers() {
        return answers.get(at);
    }

    /** What the learner has done in every step, for keeping. */
    public List<Answers> allAnswers() {
        return answers;
    }

    /** The bench that the learner works on. */
    public Scenario bench() {
        return situation.scenario();
    }

    /** The bench shown beside it to compare with. */
    public Optional<Scenario> beside() {
        return step().head().beside().map(named::get);
    }

    /** Whether the bench may be worked on: not before a prediction is in. */
    public boolean mayTouch() {
        boolean predicts =
                step() instanceof Step.Estimate
                        || (step() instanceof Step.Choose it && it.role() == Step.Role.PREDICT);
        return !predicts || !answers().isOpen();
    }

    /** Whether the step is done or shown; steps that only tell something always are. */
    public boolean mayGoOn() {
        return asksNothing(step()) || !answers().isOpen();
    }

    private static boolean asksNothing(Step step) {
        return step instanceof Step.Say
                || step instanceof Step.Explain
                || step instanceof Step.Caution;
    }

    public boolean isLast() {
        return at == lesson.steps().size() - 1;
    }

    /** Conditions of this step that do not hold yet. */
    public List<Condition> open() {
        return step() instanceof Step.Do task
                ? task.until().stream().filter(it -> !it.holds(situation)).toList()
                : List.of();
    }

    /** After the learner has changed the bench, in whatever way. */
    public LessonPlayer edited(Scenario bench) {
        LessonPlayer next = withBench(bench);
        boolean solved = step() instanceof Step.Do && answers().isOpen() && next.open().isEmpty();
        return solved ? next.withAnswers(answers().with(State.DONE)) : next;
    }

    /** After the learner has chosen an answer; what is once chosen stays. */
    public LessonPlayer choose(int place) {
        if (!(step() instanceof Step.Choose choose) || !answers().isOpen()) {
            return this;
        }
        if (place < 0 || place >= choose.choices().size()) {
            throw new IllegalArgumentException("no answer at place " + place);
        }
        return withAnswers(answers().chosen(place));
    }

    /**
     * After the learner has typed a number: as a guess, which stays, or as a reading, which is
     * compared with what this learner's bench says.
     *
     * @param value in the unit of the reading
     */
    public LessonPlayer type(double value) {
        if (!answers().isOpen()) {
            return this;
        }
        if (step() instanceof Step.Estimate) {
            return withAnswers(answers().typed(value, State.DONE));
        }
        if (step() instanceof Step.Measure measure) {
            OptionalDouble real = situation.read(measure.reading());
            boolean met = real.isPresent() && measure.around(real.getAsDouble()).hold(value);
            return withAnswers(answers().typed(value, met ? State.DONE : State.OPEN));
        }
        return this;
    }

    /** Hints asked for so far, in words. */
    public List<String> hints() {
        List<LocalText> all = hintsOf(step());
        return all.subList(0, Math.min(answers().hints(), all.size())).stream()
                .map(this::say)
                .toList();
    }

    public boolean hasMoreHints() {
        return answers().hints() < hintsOf(step()).size();
    }

    public LessonPlayer hint() {
        return hasMoreHints() ? withAnswers(answers().hinted()) : this;
    }

    private static List<LocalText> hintsOf(Step step) {
        if (step instanceof Step.Do task) {
            return task.hints();
        }
        return step instanceof Step.Measure measure ? measure.hints() : List.of();
    }

    /** The step done as its author does it: bench, right answer, reading. */
    public LessonPlayer showSolution() {
        LessonPlayer shown =
                step() instanceof Step.Do || step() instanceof Step.Measure
                        ? withBench(track.after().get(at))
                        : this;
        return shown.answers().isOpen()
                ? shown.withAnswers(shown.answers().with(State.SHOWN))
                : shown;
    }

    /** The step from its beginning: its bench, and nothing answered but a prediction. */
    public LessonPlayer reset() {
        LessonPlayer fresh = withBench(entered.get(at));
        return step() instanceof Step.Choose || step() instanceof Step.Estimate
                ? fresh
                : fresh.withAnswers(Answers.NONE);
    }

    /** The next step; the same one if this one is not done. */
    public LessonPlayer next() {
        if (!mayGoOn() || isLast()) {
            return asksNothing(step()) ? withAnswers(answers().with(State.DONE)) : this;
        }
        LessonPlayer done = answers().isOpen() ? withAnswers(answers().with(State.DONE)) : this;
        return done.leaveFor(at + 1, done.benchFor(at + 1));
    }

    /** The next step, this one shown if it is not done. */
    public LessonPlayer skip() {
        return (mayGoOn() ? this : showSolution()).next();
    }

    /** The step before, with its bench as it was left; what was done in it stays done. */
    public LessonPlayer back() {
        return at == 0 ? this : leaveFor(at - 1, left.get(at - 1));
    }

    /** Any step, with its bench as the author meant it: for who leads a class. */
    public LessonPlayer jump(int place) {
        return leaveFor(place, track.before().get(place));
    }

    private Scenario benchFor(int place) {
        boolean laidOut = lesson.steps().get(place).head().bench().isPresent();
        return laidOut ? track.before().get(place) : bench();
    }

    private LessonPlayer leaveFor(int place, Scenario bench) {
        List<Scenario> newLeft = new ArrayList<>(left);
        newLeft.set(at, bench());
        List<Scenario> newEntered = new ArrayList<>(entered);
        newEntered.set(place, bench);
        return new LessonPlayer(this, place, answers, newEntered, newLeft, situation.with(bench));
    }

    private LessonPlayer withBench(Scenario bench) {
        return new LessonPlayer(this, at, answers, entered, left, situation.with(bench));
    }

    private LessonPlayer withAnswers(Answers given) {
        List<Answers> all = new ArrayList<>(answers);
        all.set(at, given);
        return new LessonPlayer(this, at, all, entered, left, situation);
    }

    /** A text in the learner's language, readings filled in as they are now. */
    public String say(LocalText text) {
        return Filling.fill(text.in(locale), situation, locale);
    }

    /** A reading of the learner's bench, or of one that the lesson names. */
    public OptionalDouble read(ReadingRef ref) {
        return situation.read(ref);
    }

    /** The predictions that this step answers, and what came of them. */
    public List<Verdict> verdicts() {
        return questions().due();
    }

    /** Every question of the lesson with what the learner said: the summary at the end. */
    public List<Verdict> summary() {
        return questions().all();
    }

    private Questions questions() {
        return new Questions(lesson, locale, at, answers, left, situation);
    }
}
