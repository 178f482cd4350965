package org.sagwise.ui.lesson;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.sagwise.file.LessonProgress;
import org.sagwise.lesson.Lesson;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.lesson.Naming;
import org.sagwise.lesson.Recall;
import org.sagwise.lesson.RecallRound;
import org.sagwise.lesson.Shuffle;
import org.sagwise.lesson.Sureness;
import org.sagwise.part.Catalogue;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.document.Documents;

/**
 * A lesson on the bench: lays out what each step asks for, watches what the learner does with it,
 * and keeps the button locked until a prediction is in. The learner's own bench is laid aside
 * meanwhile.
 */
public final class LessonSession {

    private final BenchModel bench;
    private final Documents documents;
    private final Catalogue catalogue;
    private final Supplier<Locale> locale;
    private final ProgressBook book;
    private final Runnable fit;
    private final Supplier<Shuffle> chance;
    private final HintTimer patience;
    private final BooleanSupplier timePassed;
    private final ReadOnlyObjectWrapper<Optional<LessonPlayer>> player = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyBooleanWrapper atSummary = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyObjectWrapper<Optional<RecallRound>> recall = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final Supplier<List<Lesson>> taught;
    private final Map<String, String> ownWords = new HashMap<>();
    private boolean laying;
    private boolean inClass;

    /**
     * @param locale the language of the window
     * @param book keeps how far one is
     * @param fit brings the whole bench into view
     * @param chance in which order the answers of a lesson that begins stand
     * @param patience when hints are given
     * @param timePassed whether the bench is shown at a later moment than its start
     * @param taught the lessons in the order in which they are taught
     */
    public LessonSession(
            BenchModel bench,
            Documents documents,
            Catalogue catalogue,
            Supplier<Locale> locale,
            ProgressBook book,
            Runnable fit,
            Supplier<Shuffle> chance,
            HintTimer patience,
            BooleanSupplier timePassed,
            Supplier<List<Lesson>> taught) {
        this.taught = taught;
        this.book = book;
        this.fit = fit;
        this.chance = chance;
        this.patience = patience;
        this.timePassed = timePassed;
        this.bench = bench;
        this.documents = documents;
        this.catalogue = catalogue;
        this.locale = locale;
        bench.historyProperty().subscribe((before, now) -> look());
        bench.button().downProperty().subscribe((before, now) -> look());
        documents.lentProperty().subscribe((before, now) -> endUnless(now));
        player.subscribe(now -> now.ifPresent(book::keep));
        player.subscribe(
                now -> bench.setExercise(now.filter(LessonPlayer::isAtOpenTask).isPresent()));
    }

    /** Who plays which lesson; empty while none runs. */
    public ReadOnlyObjectProperty<Optional<LessonPlayer>> playerProperty() {
        return player.getReadOnlyProperty();
    }

    public Optional<LessonPlayer> player() {
        return player.get();
    }

    /** Whether the lesson is over and its summary is shown. */
    public ReadOnlyBooleanProperty atSummaryProperty() {
        return atSummary.getReadOnlyProperty();
    }

    public boolean atSummary() {
        return atSummary.get();
    }

    /** What somebody wrote in the lesson that runs, by step; gone with the lesson. */
    Map<String, String> ownWords() {
        return ownWords;
    }

    /** The questions of earlier lessons with which one opens; empty when they are over. */
    public ReadOnlyObjectProperty<Optional<RecallRound>> recallProperty() {
        return recall.getReadOnlyProperty();
    }

    /** Begins a lesson, or goes on with one that is not done. */
    public void start(Lesson lesson) {
        boolean begun = book.standing(lesson).state() == LessonStatus.State.BEGUN;
        start(book.place(lesson).filter(kept -> begun).map(kept -> resumed(lesson, kept)), lesson);
    }

    /** Begins the lesson that runs from its first step, with nothing answered. */
    public void restart() {
        player().map(LessonPlayer::lesson).ifPresent(same -> start(Optional.empty(), same));
    }

    private void start(Optional<LessonPlayer> resumed, Lesson lesson) {
        leave();
        LessonPlayer next = resumed.orElseGet(
                () -> LessonPlayer.begin(lesson, catalogue, locale.get()).shuffled(chance.get()));
        laying = true;
        documents.lend(next.bench());
        laying = false;
        enter(next);
        if (resumed.isEmpty()) {
            recall.set(RecallRound.of(book.recalls(taught.get(), lesson), catalogue, locale.get()));
        }
    }

    /** Goes to the step of a lesson at which an idea is shown. */
    public void show(Recall.Item item) {
        start(Optional.empty(), item.lesson());
        recall.set(Optional.empty());
        jump(item.step());
    }

    private LessonPlayer resumed(Lesson lesson, LessonProgress.Place kept) {
        LessonPlayer there = LessonPlayer.resume(lesson, catalogue, locale.get(), kept.reached(), kept.answers())
                .shuffled(kept.shuffle());
        // What was done on the bench in a step that is done is done on the bench now.
        return there.step().isObservation() && !there.answers().isOpen() ? there.showSolution() : there;
    }

    /** Ends the lesson and brings back what lay on the bench before. */
    public void leave() {
        documents.giveBack();
    }

    /** Goes on: to the next step if this one is done, after the last to the summary. */
    public void next() {
        if (recall.get().isPresent()) {
            recall.set(recall.get().get().next());
            return;
        }
        player().filter(LessonPlayer::mayGoOn).ifPresent(this::goOn);
    }

    private void goOn(LessonPlayer now) {
        if (now.isLast()) {
            player.set(Optional.of(now.next()));
            atSummary.set(true);
        } else {
            enter(now.next());
        }
    }

    public void back() {
        if (atSummary.get()) {
            atSummary.set(false);
        } else {
            player().filter(now -> now.at() > 0).map(LessonPlayer::back).ifPresent(this::enter);
        }
    }

    public void jump(int place) {
        recall.set(Optional.empty());
        player().map(now -> atBeginning(now.jump(place))).ifPresent(this::enter);
    }

    private static LessonPlayer atBeginning(LessonPlayer jumped) {
        return jumped.step().isObservation() ? jumped.reset() : jumped;
    }

    /**
     * Whether the bench is shown at a later moment than its start, to which readings and conditions
     * of a lesson belong.
     */
    boolean hasTimePassed() {
        return timePassed.getAsBoolean();
    }

    /** How patient one is with who learns. */
    public HintTimer patience() {
        return patience;
    }

    public void choose(int place) {
        if (recall.get().isPresent()) {
            remember(recall.get().get().choose(place));
            return;
        }
        change(now -> inClass ? now.choose(place).sure(Optional.empty()) : now.choose(place));
        unlock();
    }

    /** How sure one is of the answer just chosen. */
    void sure(Sureness sureness) {
        change(now -> now.sure(Optional.of(sureness)));
        unlock();
    }

    boolean isInClass() {
        return inClass;
    }

    /** A class raises hands: nobody is asked for a reason or how sure they are. */
    void setInClass(boolean looksOn) {
        inClass = looksOn;
        if (looksOn && player().filter(LessonPlayer::isAskingHowSure).isPresent()) {
            change(now -> now.sure(Optional.empty()));
            unlock();
        }
    }

    private void remember(RecallRound answered) {
        if (!recall.get().equals(Optional.of(answered))) {
            recall.set(Optional.of(answered));
            player().ifPresent(now -> book.keep(answered, taught.get(), now.lesson()));
        }
    }

    /**
     * @param value in the unit of the reading that is asked for
     */
    public void type(double value) {
        change(now -> now.type(value));
        patience.tried();
        unlock();
    }

    /** Gives a hint, if it is time for one. */
    public void hint() {
        if (patience.mayHintProperty().get()) {
            change(LessonPlayer::hint);
            patience.hinted();
        }
    }

    /** Does the step as its author does it. */
    public void showSolution(String editName) {
        player().map(LessonPlayer::showSolution).ifPresent(shown -> rebuild(editName, shown));
        unlock();
    }

    /** The step from its beginning; the bench as well, which can be undone. */
    public void reset(String editName) {
        player().map(LessonPlayer::reset).ifPresent(fresh -> rebuild(editName, fresh));
    }

    /** Goes on in another language; the bench speaks it as well. */
    public void speak() {
        player().filter(now -> !now.locale().equals(locale.get())).ifPresent(this::speak);
    }

    private void speak(LessonPlayer now) {
        laying = true;
        bench.rewrite(new Naming(now.lesson(), now.locale(), locale.get())::translate);
        laying = false;
        player.set(Optional.of(onBench(now.speaking(locale.get()))));
    }

    /** Goes on, at the step of the same name, in the lesson that its author has just changed. */
    public void reload(Lesson changed) {
        boolean over = atSummary.get();
        player().filter(now -> now.lesson().id().equals(changed.id()))
                .filter(now -> !now.lesson().equals(changed))
                .map(now -> now.reloaded(changed))
                .ifPresent(next -> {
                    enter(next);
                    atSummary.set(over);
                });
    }

    private void change(UnaryOperator<LessonPlayer> change) {
        if (!atSummary.get()) {
            player().map(change).ifPresent(next -> player.set(Optional.of(next)));
        }
    }

    private void unlock() {
        if (player().filter(LessonPlayer::mayTouch).isPresent()) {
            bench.button().unlock();
        }
    }

    private void enter(LessonPlayer next) {
        atSummary.set(false);
        laying = true;
        bench.button().unlock();
        if (!next.bench().released().equals(bench.scenario().released())) {
            bench.open(next.bench());
        }
        if (!next.mayTouch()) {
            bench.button().lock();
        }
        bench.spotlight().show(StepLight.of(next.step(), bench.scenario()));
        laying = false;
        fit.run();
        patience.begin();
        player.set(Optional.of(onBench(next)));
    }

    private void rebuild(String editName, LessonPlayer next) {
        laying = true;
        bench.edit(editName, now -> next.bench());
        if (next.bench().fired() != bench.button().isDown()) {
            bench.button().start(next.bench().fired());
        }
        bench.spotlight().show(StepLight.of(next.step(), bench.scenario()));
        laying = false;
        fit.run();
        player.set(Optional.of(onBench(next)));
    }

    /** The bench changed: perhaps the step is done now. */
    private void look() {
        if (!laying) {
            change(this::onBench);
            patience.tried();
        }
    }

    private LessonPlayer onBench(LessonPlayer now) {
        return now.edited(bench.scenario(), bench.button().press());
    }

    private void endUnless(boolean lent) {
        if (!lent) {
            bench.button().unlock();
            atSummary.set(false);
            recall.set(Optional.empty());
            ownWords.clear();
            player.set(Optional.empty());
        }
    }
}
