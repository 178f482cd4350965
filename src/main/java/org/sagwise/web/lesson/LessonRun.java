package org.sagwise.web.lesson;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongSupplier;
import java.util.function.UnaryOperator;
import org.sagwise.file.LessonProgress;
import org.sagwise.lesson.HintPace;
import org.sagwise.lesson.Lesson;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.lesson.Naming;
import org.sagwise.lesson.RecallRound;
import org.sagwise.lesson.Shuffle;
import org.sagwise.lesson.Sureness;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;
import org.sagwise.web.engine.LiveBench;

/**
 * A lesson on a live bench: lays out what each step asks for, watches what the reader does with it, and keeps the
 * button locked and the readings veiled until what is asked has been answered. Knows no page.
 */
public final class LessonRun {

    private final LessonBook book;
    private final LiveBench bench;
    private final HintPace pace;
    private final List<Lesson> begun;
    private final Map<String, String> ownWords = new HashMap<>();
    private LessonPlayer player;
    private Optional<RecallRound> recall = Optional.empty();
    private boolean over;
    private Scenario seen;
    private Press thumb;

    /**
     * Begins a lesson, or goes on with it where the reader left it.
     *
     * @param begun lessons that this reader has begun, for their questions
     * @param seed where chance begins for the order of answers; not 0
     * @param nanoTime real time, ns
     */
    public LessonRun(
            Lesson lesson,
            LiveBench bench,
            LessonBook book,
            List<Lesson> begun,
            Locale locale,
            long seed,
            LongSupplier nanoTime) {
        this.book = book;
        this.bench = bench;
        this.begun = begun;
        pace = new HintPace(nanoTime);
        LessonPlayer fresh =
                LessonPlayer.begin(lesson, bench.catalogue(), locale).shuffled(new Shuffle(seed));
        Optional<LessonProgress.Place> kept = book.place(lesson).filter(LessonRun::isBegun);
        player = kept.map(it -> resumed(fresh, it)).orElse(fresh);
        enter(player);
        if (kept.isEmpty()) {
            recall = RecallRound.of(book.recalls(begun, lesson), bench.catalogue(), locale);
        }
    }

    /** Whether there is something to go on with: a lesson that is done begins anew. */
    private static boolean isBegun(LessonProgress.Place kept) {
        boolean last = kept.reached() == kept.answers().size() - 1
                && !kept.answers().get(kept.reached()).isOpen();
        return !last
                && (kept.reached() > 0
                        || kept.answers().stream()
                                .anyMatch(it -> !it.isOpen() || it.choice().isPresent()));
    }

    private LessonPlayer resumed(LessonPlayer fresh, LessonProgress.Place kept) {
        LessonPlayer there = LessonPlayer.resume(
                        fresh.lesson(), bench.catalogue(), fresh.locale(), kept.reached(), kept.answers())
                .shuffled(kept.shuffle());
        // What was done on the bench in a step that is done is done on the bench now.
        return there.step().isObservation() && !there.answers().isOpen() ? there.showSolution() : there;
    }

    public LessonPlayer player() {
        return player;
    }

    /** Whether the last step is left, and its summary shown. */
    public boolean isOver() {
        return over;
    }

    /** The questions of earlier lessons with which one opens; empty when they are over. */
    public Optional<RecallRound> recall() {
        return recall;
    }

    /** Lessons that this reader has begun. */
    public List<Lesson> begun() {
        return begun;
    }

    public HintPace pace() {
        return pace;
    }

    /** What somebody wrote, by step; gone with the page. */
    public Map<String, String> ownWords() {
        return ownWords;
    }

    /** Whether the button is locked and nothing is told that depends on the circuit. */
    public boolean isAsking() {
        return !over && !player.mayTouch();
    }

    /** Looks at the bench: perhaps the step is done now. Whether anything is new. */
    public boolean look() {
        if (over || bench.scenario() == seen && press() == thumb) {
            return false;
        }
        pace.tried();
        take(onBench(player));
        return true;
    }

    private Press press() {
        return Press.of(bench.isHeld());
    }

    private LessonPlayer onBench(LessonPlayer now) {
        seen = bench.scenario();
        thumb = press();
        return now.edited(seen, thumb);
    }

    private void take(LessonPlayer next) {
        player = next;
        book.keep(next);
    }

    /** Goes on: to the next step if this one is done, after the last to the summary. */
    public void next() {
        if (recall.isPresent()) {
            recall = recall.get().next();
        } else if (player.mayGoOn()) {
            boolean last = player.isLast();
            LessonPlayer next = player.next();
            if (last) {
                take(next);
                over = true;
            } else {
                enter(next);
            }
        }
    }

    public void back() {
        if (over) {
            over = false;
        } else if (player.at() > 0) {
            enter(player.back());
        }
    }

    /** Begins the lesson from its first step, with nothing answered. */
    public void restart(long seed) {
        recall = Optional.empty();
        ownWords.clear();
        enter(LessonPlayer.begin(player.lesson(), bench.catalogue(), player.locale())
                .shuffled(new Shuffle(seed)));
    }

    public void choose(int place) {
        if (recall.isPresent()) {
            RecallRound answered = recall.get().choose(place);
            if (!answered.equals(recall.get())) {
                recall = Optional.of(answered);
                book.keep(answered, begun, player.lesson());
            }
        } else {
            change(now -> now.choose(place));
        }
    }

    /** How sure one is of the answer just chosen. */
    public void sure(Sureness sureness) {
        change(now -> now.sure(Optional.of(sureness)));
    }

    /**
     * @param value in the unit of the reading that is asked for
     */
    public void type(double value) {
        pace.tried();
        change(now -> now.type(value));
    }

    /** Gives a hint, if it is time for one. */
    public void hint() {
        if (pace.mayHint() && player.hasMoreHints()) {
            change(LessonPlayer::hint);
            pace.hinted();
        }
    }

    private void change(UnaryOperator<LessonPlayer> change) {
        if (!over) {
            take(change.apply(player));
        }
    }

    /** Does the step as its author does it. */
    public void showSolution(String editName) {
        remake(editName, player.showSolution());
    }

    /** The step from its beginning; the bench as well, which can be undone. */
    public void reset(String editName) {
        remake(editName, player.reset());
    }

    /** Goes on in another language; the bench speaks it as well. */
    public void speak(Locale locale) {
        bench.translate(new Naming(player.lesson(), player.locale(), locale)::translate);
        player = onBench(player.speaking(locale));
        recall = recall.flatMap(round -> translated(round, locale));
    }

    private Optional<RecallRound> translated(RecallRound round, Locale locale) {
        return RecallRound.of(
                        new ArrayList<>(round.asked().stream()
                                .map(RecallRound.Asked::item)
                                .toList()),
                        bench.catalogue(),
                        locale)
                .map(other -> new RecallRound(other.asked(), round.at(), round.chosen()));
    }

    private void enter(LessonPlayer next) {
        over = false;
        bench.hold(false);
        if (!next.bench().released().equals(bench.scenario().released())) {
            bench.open(next.bench());
        }
        pace.begin();
        take(onBench(next));
    }

    private void remake(String editName, LessonPlayer next) {
        bench.remake(editName, next.bench());
        take(onBench(next));
    }
}
