package org.sagwise.lesson;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.sagwise.lesson.Answers.State;
import org.sagwise.part.Catalogue;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.LocalText;

/**
 * A learner somewhere in a lesson. Immutable: each thing the learner does gives another one. There
 * is always a way on: a step that does not come out right can be shown, and a shown step is left
 * with its bench as the author meant it.
 */
public final class LessonPlayer {

    private final Script script;
    private final Shuffle shuffle;
    private final int at;
    private final List<Answers> answers;
    private final Benches benches;
    private final Situation situation;

    LessonPlayer(Script script, Shuffle shuffle, int at, List<Answers> answers, Benches benches, Situation situation) {
        this.script = script;
        this.shuffle = shuffle;
        this.at = at;
        this.answers = List.copyOf(answers);
        this.benches = benches;
        this.situation = situation;
    }

    /** A learner at the beginning of a lesson. */
    public static LessonPlayer begin(Lesson lesson, Catalogue catalogue, Locale locale) {
        Script script = Script.of(lesson, catalogue, locale);
        return new LessonPlayer(
                script,
                Shuffle.NONE,
                0,
                Collections.nCopies(script.steps(), Answers.NONE),
                Benches.of(script.track()),
                script.situation(script.track().before().get(0)));
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
        return fresh.script.fits(reached, given) ? fresh.having(given).jump(reached) : fresh;
    }

    private LessonPlayer having(List<Answers> given) {
        return new LessonPlayer(script, shuffle, at, given, benches, situation);
    }

    /** The same with the answers of questions in another order. */
    public LessonPlayer shuffled(Shuffle other) {
        return new LessonPlayer(script, other, at, answers, benches, situation);
    }

    public Shuffle shuffle() {
        return shuffle;
    }

    /** The same in another language, with everything that was done on the benches. */
    public LessonPlayer speaking(Locale locale) {
        Naming naming = new Naming(lesson(), script.locale(), locale);
        Script other = Script.of(lesson(), script.catalogue(), locale);
        return new LessonPlayer(
                other,
                shuffle,
                at,
                answers,
                benches.map(naming::translate),
                other.situation(naming.translate(bench())));
    }

    /** The language in which it is told. */
    public Locale locale() {
        return script.locale();
    }

    /**
     * The same learner in a lesson that its author has just changed: at the step of the same name,
     * with the answers that still fit.
     */
    public LessonPlayer reloaded(Lesson changed) {
        return Reload.of(script, at, answers, bench(), Script.of(changed, script.catalogue(), script.locale()))
                .shuffled(shuffle);
    }

    public Lesson lesson() {
        return script.lesson();
    }

    /** Place of the step, from 0. */
    public int at() {
        return at;
    }

    public Step step() {
        return script.step(at);
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
        return step().head().beside().map(script.named()::get);
    }

    /** Whether something is to be done on the bench that is not done yet. */
    public boolean isAtOpenTask() {
        return step() instanceof Step.Do && answers().isOpen();
    }

    /** Whether the button may be pressed and readings be seen: not before what is asked has been answered. */
    public boolean mayTouch() {
        return script.askedAt(at).stream().noneMatch(place -> answers.get(place).isOpen());
    }

    /** Whether the step is done or shown; steps that only tell something always are. */
    public boolean mayGoOn() {
        return step().asksNothing() || !answers().isOpen();
    }

    public boolean isLast() {
        return at == script.steps() - 1;
    }

    /** Conditions of this step that do not hold yet. */
    public List<Condition> open() {
        return step() instanceof Step.Do task
                ? task.until().stream().filter(it -> !it.holds(situation)).toList()
                : List.of();
    }

    /** After the learner has changed the bench, in whatever way. */
    public LessonPlayer edited(Scenario bench) {
        return edited(bench, bench.press());
    }

    /** After the learner has changed the bench, or pressed its button or let go. */
    public LessonPlayer edited(Scenario bench, Press press) {
        LessonPlayer next = withBench(situation.with(bench, press));
        return next.withAnswers(Answering.edit(step(), answers(), next.situation));
    }

    /** After the learner has chosen an answer; what is once chosen stays. */
    public LessonPlayer choose(int place) {
        return withAnswers(Answering.choose(step(), answers(), place));
    }

    /** Whether an answer is chosen and only this is open: how sure of it the learner is. */
    public boolean isAskingHowSure() {
        return Answering.isAskingHowSure(step(), answers());
    }

    /** After the learner has said how sure; empty where nobody is asked, as in a class. */
    public LessonPlayer sure(Optional<Sureness> sureness) {
        return withAnswers(Answering.sure(step(), answers(), sureness));
    }

    /**
     * After the learner has typed a number: as a guess, which stays, or as a reading, which is
     * compared with what this learner's bench says.
     *
     * @param value in the unit of the reading
     */
    public LessonPlayer type(double value) {
        return withAnswers(Answering.type(step(), answers(), situation, value));
    }

    /** Whether the number asked for shows only with the button held, and nobody has held it in this step. */
    public boolean mustHold() {
        return step() instanceof Step.Measure measure && Answering.mustHold(measure, answers(), situation);
    }

    /** Hints asked for so far, in words. */
    public List<String> hints() {
        List<LocalText> all = step().hints();
        return all.subList(0, Math.min(answers().hints(), all.size())).stream()
                .map(this::say)
                .toList();
    }

    public boolean hasMoreHints() {
        return answers().hints() < step().hints().size();
    }

    public LessonPlayer hint() {
        return hasMoreHints() ? withAnswers(answers().hinted()) : this;
    }

    /** The step done as its author does it: bench, right answer, reading. */
    public LessonPlayer showSolution() {
        LessonPlayer shown = step() instanceof Step.Do || step() instanceof Step.Measure
                ? withBench(script.track().after().get(at))
                : this;
        return shown.answers().isOpen() ? shown.withAnswers(shown.answers().with(State.SHOWN)) : shown;
    }

    /** The step from its beginning: its bench, and nothing answered but a prediction. */
    public LessonPlayer reset() {
        LessonPlayer fresh = withBench(benches.entered().get(at));
        return step() instanceof Step.Choose || step() instanceof Step.Estimate
                ? fresh
                : fresh.withAnswers(Answers.NONE);
    }

    /** The next step; the same one if this one is not done. */
    public LessonPlayer next() {
        if (!mayGoOn() || isLast()) {
            return step().asksNothing() ? withAnswers(answers().with(State.DONE)) : this;
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
        return at == 0 ? this : leaveFor(at - 1, benches.left().get(at - 1));
    }

    /** Any step, with its bench as the author meant it: for who leads a class. */
    public LessonPlayer jump(int place) {
        return leaveFor(place, script.track().before().get(place));
    }

    private Scenario benchFor(int place) {
        boolean laidOut = script.step(place).head().bench().isPresent();
        return laidOut ? script.track().before().get(place) : bench();
    }

    private LessonPlayer leaveFor(int place, Scenario bench) {
        Benches moved = benches.move(at, bench(), place, bench);
        return new LessonPlayer(script, shuffle, place, answers, moved, situation.with(bench));
    }

    private LessonPlayer withBench(Scenario bench) {
        return withBench(situation.with(bench));
    }

    private LessonPlayer withBench(Situation now) {
        return new LessonPlayer(script, shuffle, at, answers, benches, now);
    }

    private LessonPlayer withAnswers(Answers given) {
        List<Answers> all = new ArrayList<>(answers);
        all.set(at, given);
        return new LessonPlayer(script, shuffle, at, all, benches, situation);
    }

    /** A text in the learner's language, readings filled in as they are now. */
    public String say(LocalText text) {
        return Filling.fill(text.in(script.locale()), situation, script.locale());
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
        return new Questions(lesson(), script.locale(), at, answers, benches.left(), situation);
    }
}
