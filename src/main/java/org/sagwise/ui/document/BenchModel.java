package org.sagwise.ui.document;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.Caution;
import org.sagwise.plan.NextStep;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.edit.History;

/**
 * The document on the bench with everything that is computed of it. The one place from which every
 * view of the window takes its numbers.
 *
 * <p>Holding the button is no edit: it changes what is shown and not what would be saved.
 *
 * <p>Where computing fails, an edit is not made, and another document lies there without a single
 * number: what was computed of the one before must never be read as being about this one.
 */
public final class BenchModel {

    private final Function<Scenario, Assessment> assess;
    private final FireButtonState thumb = new FireButtonState();
    private final Spotlight spotlight = new Spotlight();
    private final ReadOnlyBooleanWrapper exercise = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyObjectWrapper<History> history;
    private final ReadOnlyObjectWrapper<Assessment> assessment;
    private final ReadOnlyBooleanWrapper judged = new ReadOnlyBooleanWrapper(true);
    private final ReadOnlyObjectWrapper<NextStep> nextStep;
    private final Assessment nothing;
    private Assessment whole;
    private List<Caution> cautions;
    private int openings;

    /**
     * @param assess computes everything about a scenario
     * @param first what lies on the bench to begin with
     */
    public BenchModel(Function<Scenario, Assessment> assess, Scenario first) {
        this.assess = assess;
        history = new ReadOnlyObjectWrapper<>(History.of(first));
        thumb.start(first.fired());
        nothing = assess.apply(Scenario.empty());
        whole = assess.apply(first).with(press());
        assessment = new ReadOnlyObjectWrapper<>(whole);
        cautions = assessment().cautions();
        nextStep = new ReadOnlyObjectWrapper<>(NextStep.of(assessment().bench()));
        thumb.downProperty().subscribe((before, now) -> turn());
        thumb.lockedProperty().subscribe((before, now) -> put(whole));
    }

    /** How many documents have been put on the bench since the first: tells one from another. */
    public int openings() {
        return openings;
    }

    /** Puts another document on the bench. The present one is gone. */
    public void open(Scenario scenario) {
        begin(History.of(scenario));
    }

    /** Puts a document on the bench that is in no file, and is lost unless it is saved. */
    public void openUnsaved(Scenario scenario) {
        begin(History.ofUnsaved(scenario));
    }

    private void begin(History first) {
        Scenario scenario = first.present();
        openings++;
        history.set(first);
        try {
            judge(() -> assess.apply(scenario).with(press()), this::take);
        } finally {
            spotlight.clear();
            thumb.start(scenario.fired());
        }
    }

    /** Puts a document back on the bench that was laid aside, with everything done to it. */
    public void resume(History aside) {
        set(aside);
        spotlight.clear();
        thumb.start(scenario().fired());
    }

    /**
     * Changes the document.
     *
     * @param name what the change is called, for people
     */
    public void edit(String name, UnaryOperator<Scenario> change) {
        set(history.get().edited(name, change.apply(scenario())));
    }

    /**
     * Changes the document anew from an earlier state, for a hand that is still on its way: whatever it passed leaves
     * no trace.
     *
     * @param base the history when the hand set out
     */
    public void editFrom(History base, String name, Scenario result) {
        set(base.edited(name, result));
    }

    /**
     * Says every state of the document in other words, also those that undo leads back to. It is no
     * edit.
     */
    public void rewrite(UnaryOperator<Scenario> words) {
        set(history.get().rewritten(words));
    }

    public void undo() {
        set(history.get().undone());
    }

    public void redo() {
        set(history.get().redone());
    }

    /** Notes that the present document has been written to a file. */
    public void markSaved() {
        history.set(history.get().saved());
    }

    /** The document as it would be saved. */
    public Scenario scenario() {
        return history.get().present();
    }

    public History history() {
        return history.get();
    }

    public ReadOnlyObjectProperty<History> historyProperty() {
        return history.getReadOnlyProperty();
    }

    /**
     * Shows another moment of what lies on the bench, until the document changes. A moment of an
     * earlier document is not shown.
     */
    public void show(Assessment moment) {
        if (moment.bench() == assessment().bench()) {
            put(moment);
        }
    }

    /**
     * Everything computed of the document, with the button as it is held or not. While the button is locked, only
     * what lies there: every view of the window keeps the secret thereby.
     */
    public Assessment assessment() {
        return assessment.get();
    }

    public ReadOnlyObjectProperty<Assessment> assessmentProperty() {
        return assessment.getReadOnlyProperty();
    }

    /** What the document lacks most before current can go round on it. */
    public ReadOnlyObjectProperty<NextStep> nextStepProperty() {
        return nextStep.getReadOnlyProperty();
    }

    /** Whether what is shown is computed of the document; if not, computing it has failed. */
    public ReadOnlyBooleanProperty judgedProperty() {
        return judged.getReadOnlyProperty();
    }

    public FireButtonState button() {
        return thumb;
    }

    /** Whether what is wrong here is to be mended by hand: no cure is offered that would do it. */
    public ReadOnlyBooleanProperty exerciseProperty() {
        return exercise.getReadOnlyProperty();
    }

    public void setExercise(boolean byHand) {
        exercise.set(byHand);
    }

    public Spotlight spotlight() {
        return spotlight;
    }

    /**
     * Takes up what only time shows, which is found out beside the window's thread and comes a moment later.
     *
     * @param looked the document that was looked at; nothing happens if another lies on the bench by now
     * @param all its cautions, those of the first moment included
     */
    public void foresee(Scenario looked, List<Caution> all) {
        if (looked.equals(scenario()) && !all.equals(cautions)) {
            cautions = all;
            put(whole);
        }
    }

    private void set(History next) {
        if (next.present().equals(scenario())) {
            history.set(next);
            return;
        }
        // Computed first: an edit whose outcome cannot be computed leaves everything as it was.
        Assessment of = assess.apply(next.present()).with(press());
        history.set(next);
        judged.set(true);
        take(of);
    }

    private void turn() {
        if (judged.get()) {
            judge(() -> assessment().with(press()), this::put);
        }
    }

    /** Shows what is computed; where that fails, nothing is shown, and the failure goes on. */
    private void judge(Supplier<Assessment> compute, Consumer<Assessment> show) {
        Optional<Assessment> computed = Optional.empty();
        try {
            computed = Optional.of(compute.get());
        } finally {
            judged.set(computed.isPresent());
            computed.ifPresentOrElse(show, () -> take(nothing));
        }
    }

    private void take(Assessment next) {
        cautions = next.cautions();
        nextStep.set(NextStep.of(next.bench()));
        put(next);
    }

    /** While the button is locked, readings and cautions would tell what is to be predicted. */
    private void put(Assessment next) {
        whole = next;
        assessment.set(thumb.lockedProperty().get() ? next.veiled() : next.saying(cautions));
    }

    private Press press() {
        return thumb.press();
    }
}
