package org.sagwise.web.engine;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongSupplier;
import java.util.function.UnaryOperator;
import org.sagwise.assessment.Assessment;
import org.sagwise.assessment.fix.Fixes;
import org.sagwise.assessment.fix.Offer;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.LookAhead;
import org.sagwise.part.Catalogue;
import org.sagwise.part.PartKind;
import org.sagwise.reading.Bench;
import org.sagwise.report.compare.Comparison;
import org.sagwise.run.RunState;
import org.sagwise.run.Work;
import org.sagwise.run.playback.SameCircuit;
import org.sagwise.scenario.Draft;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioRules;
import org.sagwise.scenario.edit.Edit;
import org.sagwise.scenario.edit.FlipParts;
import org.sagwise.scenario.edit.History;

/**
 * A bench in a reader's hands: what lies on it and what it has been, and the button; {@link #time()} lets time pass on
 * it. Knows no page; whoever shows it asks for {@link #shown()} after each deed. Not for several threads.
 */
public final class LiveBench {

    /** Cells whose turning is worked out ahead. */
    private static final int MOST_TURNED = 8;

    private final Catalogue catalogue;
    private final ScenarioRules rules;
    private final LiveTime time;
    private final KnownBenches known;
    private History history;
    private Assessment shown;
    private boolean held;
    private boolean foreseen;

    private LiveBench(Scenario came, Catalogue catalogue, LongSupplier nanoTime) {
        this.catalogue = catalogue;
        time = new LiveTime(this, nanoTime);
        rules = new ScenarioRules(catalogue);
        known = new KnownBenches(catalogue);
        history = History.of(came);
        lay();
    }

    /**
     * A bench as somebody sent it, its button let go.
     *
     * @param nanoTime real time, ns
     */
    public static LiveBench of(Scenario came, Catalogue catalogue, LongSupplier nanoTime) {
        return new LiveBench(came, catalogue, nanoTime);
    }

    /** Readings, cautions and all at the moment at which the clock stands. */
    public Assessment shown() {
        return shown;
    }

    public Scenario scenario() {
        return history.present();
    }

    public Catalogue catalogue() {
        return catalogue;
    }

    /** How time passes on it. */
    public LiveTime time() {
        return time;
    }

    Bench bench() {
        return shown.bench();
    }

    /** Shows what time has made of the bench. */
    void stand(RunState then) {
        shown = shown.at(then.states(), then.press());
    }

    void standAtStart() {
        shown = shown.at(bench().start(), press());
    }

    private void lay() {
        KnownBenches.Known now = known.of(scenario());
        shown = now.told();
        foreseen = now.isForeseen();
        time.startOver();
    }

    /**
     * Adds the cautions that only time shows, which takes some tenths of a second or more; nothing is added if the
     * bench is changed meanwhile.
     */
    public Work lookAhead() {
        Scenario of = scenario();
        LookAhead ahead = LookAhead.begin(bench(), known.of(of).first().cautions());
        return new AsideWork(ahead, () -> of == scenario() && !foreseen, () -> {}, () -> {
            foreseen = true;
            shown = shown.saying(ahead.cautions());
            known.foreseen(of, ahead.cautions());
        });
    }

    /** Whether what only time shows is told already. */
    public boolean isForeseen() {
        return foreseen;
    }

    /** The bench as it is against how it came, both before any time has passed; empty if it is as it came. */
    public Optional<Comparison> changes() {
        return history.onDisk().filter(came -> !isAsItCame()).map(this::against);
    }

    /** Another bench against this one, both before any time has passed. */
    public Comparison against(Scenario other) {
        KnownBenches.Known before = known.of(other);
        KnownBenches.Known after = known.of(scenario());
        // What only time shows is told of both or of none: a caution is not gone because nobody has looked ahead.
        return before.isForeseen() && after.isForeseen()
                ? Comparison.atOnce(before.told(), after.told())
                : Comparison.atOnce(before.first(), after.first());
    }

    /** The benches that come of turning one cell, which is what people try first; none of a bench of many cells. */
    public List<Scenario> turned() {
        List<Part> cells = scenario().partsOf(PartKind.CELL);
        return cells.size() > MOST_TURNED
                ? List.of()
                : cells.stream()
                        .map(cell -> new FlipParts(Set.of(cell.id())).apply(scenario()))
                        .filter(bench -> !known.has(bench))
                        .toList();
    }

    /** What there is to say of another bench, worked out before somebody asks for it; empty if there could be none. */
    public Optional<Assessment> learn(Scenario other) {
        return known.has(other) || rules.check(Draft.of(other)).isEmpty()
                ? Optional.of(known.of(other).told())
                : Optional.empty();
    }

    // The button.

    public boolean hasButton() {
        return !scenario().partsOf(PartKind.SWITCH).isEmpty();
    }

    public boolean isHeld() {
        return held;
    }

    /** A circuit without a button is always on, as if it were held. */
    Press press() {
        return Press.of(held || !hasButton());
    }

    /** Holds the button or lets it go. */
    public void hold(boolean down) {
        if (held == down) {
            return;
        }
        held = down;
        if (time.isGoing()) {
            time.turn(press());
        } else {
            time.set(press());
            shown = shown.with(press());
        }
    }

    // Edits.

    /** Makes an edit; or says everything that is against it, and changes nothing. */
    public List<Finding> edit(Edit edit, Locale locale) {
        List<Finding> missing = edit.missing(scenario());
        if (!missing.isEmpty()) {
            return missing;
        }
        Scenario made = edit.apply(scenario());
        List<Finding> against = known.has(made) ? List.of() : rules.check(Draft.of(made));
        if (against.isEmpty()) {
            adopt(history.edited(edit.name(scenario()).in(locale), made));
        }
        return against;
    }

    /** Cures of one caution, each tried. */
    public List<Offer> cures(Caution caution) {
        return time.state().isPresent()
                ? Fixes.of(shown, caution)
                : known.of(scenario()).cures(caution, press());
    }

    public void cure(Offer offer, Locale locale) {
        adopt(history.edited(offer.fix().name(locale), offer.result()));
    }

    public Optional<String> undoable() {
        return history.undoable();
    }

    public Optional<String> redoable() {
        return history.redoable();
    }

    public void undo() {
        adopt(history.undone());
    }

    public void redo() {
        adopt(history.redone());
    }

    /** Whether the bench is as it came. */
    public boolean isAsItCame() {
        return history.isSaved();
    }

    /** Back to how it came; what was done can be had again. */
    public void asItCame(String name) {
        history.onDisk().ifPresent(came -> adopt(history.edited(name, came)));
    }

    /** Lays another bench out, with its button as it says; what was done before is forgotten. */
    public void open(Scenario other) {
        history = History.of(other);
        held = other.fired();
        lay();
    }

    /** Lays out what somebody else has made of the bench; it can be taken back. */
    public void remake(String name, Scenario made) {
        adopt(history.edited(name, made));
        hold(made.fired());
    }

    /** Says everything that lies there in other words, also what can be had again. */
    public void translate(UnaryOperator<Scenario> words) {
        history = history.rewritten(words);
        lay();
    }

    private void adopt(History next) {
        Scenario before = scenario();
        history = next;
        if (next.present().equals(before)) {
            return;
        }
        Optional<RunState> then = time.state();
        boolean goesOn = then.isPresent() && SameCircuit.areSame(before, next.present());
        if (goesOn) {
            shown = known.of(next.present())
                    .first()
                    .saying(shown.cautions())
                    .at(then.get().states(), press());
        } else {
            lay();
        }
    }
}
