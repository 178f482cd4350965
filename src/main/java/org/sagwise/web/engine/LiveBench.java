package org.sagwise.web.engine;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
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
import org.sagwise.run.RunPlan;
import org.sagwise.run.RunResult;
import org.sagwise.run.RunState;
import org.sagwise.run.Runner;
import org.sagwise.run.Trace;
import org.sagwise.run.Work;
import org.sagwise.run.playback.Halt;
import org.sagwise.run.playback.Now;
import org.sagwise.run.playback.RealTime;
import org.sagwise.run.playback.SameCircuit;
import org.sagwise.run.playback.Slice;
import org.sagwise.run.playback.Speed;
import org.sagwise.run.playback.Timeline;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioRules;
import org.sagwise.scenario.edit.Edit;
import org.sagwise.scenario.edit.History;

/**
 * A bench in a reader's hands: what lies on it and what it has been, the button, and time. Knows no
 * page; whoever shows it asks for {@link #shown()} after each deed. Not for several threads.
 */
public final class LiveBench {

    /** Additions and multiplications after which a run-down is given up: a page must not hang. */
    private static final double MOST_EFFORT = 2e9;

    /** So many of them at a time: some ten milliseconds' worth in a browser. */
    private static final double PIECE = 1e6;

    private final Catalogue catalogue;
    private final ScenarioRules rules;
    private final LongSupplier nanoTime;
    private History history;
    private Assessment shown;
    private boolean held;
    private boolean foreseen;
    private int era;
    private Timeline timeline = new Timeline();
    private RealTime real;
    private Speed speed = Speed.ONE;
    private boolean going;
    private Optional<Halt> halt = Optional.empty();

    private LiveBench(Scenario came, Catalogue catalogue, LongSupplier nanoTime) {
        this.catalogue = catalogue;
        this.nanoTime = nanoTime;
        rules = new ScenarioRules(catalogue);
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

    private Bench bench() {
        return shown.bench();
    }

    private void lay() {
        shown = Assessment.of(history.present(), catalogue).with(press());
        foreseen = false;
        startOver();
    }

    /**
     * Adds the cautions that only time shows, which takes some tenths of a second or more; nothing is added if the
     * bench is changed meanwhile.
     */
    public Work lookAhead() {
        Scenario of = scenario();
        LookAhead ahead = LookAhead.begin(bench(), Assessment.of(of, catalogue).cautions());
        return new Aside(ahead, () -> of == scenario() && !foreseen, () -> {}, () -> {
            foreseen = true;
            shown = shown.saying(ahead.cautions());
        });
    }

    /**
     * Work beside what a reader does.
     *
     * @param wanted whether its outcome is still wanted
     * @param between done after every piece
     * @param taking takes its outcome
     */
    private record Aside(Work work, BooleanSupplier wanted, Runnable between, Runnable taking) implements Work {

        @Override
        public boolean isOver() {
            return work.isOver() || !wanted.getAsBoolean();
        }

        @Override
        public void more() {
            work.more();
            between.run();
            take();
        }

        @Override
        public void callOff() {
            if (!isOver()) {
                work.callOff();
                take();
            }
        }

        private void take() {
            if (work.isOver() && wanted.getAsBoolean()) {
                taking.run();
            }
        }
    }

    // The button.

    public boolean hasButton() {
        return !scenario().partsOf(PartKind.SWITCH).isEmpty();
    }

    public boolean isHeld() {
        return held;
    }

    /** A circuit without a button is always on, as if it were held. */
    private Press press() {
        return Press.of(held || !hasButton());
    }

    /** Holds the button or lets it go. */
    public void hold(boolean down) {
        if (held == down) {
            return;
        }
        held = down;
        if (going) {
            real.collect(speed);
            real.turn(press());
            catchUp();
        } else {
            real.set(press());
            shown = shown.with(press());
        }
    }

    // Edits.

    /** Makes an edit; or says everything that is against it, and changes nothing. */
    public List<Finding> edit(Edit edit, Locale locale) {
        List<Finding> against = edit.refusal(scenario(), rules);
        if (against.isEmpty()) {
            adopt(history.edited(edit.name(scenario()).in(locale), edit.apply(scenario())));
        }
        return against;
    }

    /** Cures of one caution, each tried. */
    public List<Offer> cures(Caution caution) {
        return Fixes.of(shown, caution);
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
        Optional<RunState> then = timeline.state();
        boolean goesOn = then.isPresent() && SameCircuit.areSame(before, next.present());
        if (goesOn) {
            shown = Assessment.of(next.present(), catalogue)
                    .saying(shown.cautions())
                    .at(then.get().states(), press());
        } else {
            lay();
        }
    }

    // Time.

    public void setSpeed(Speed wanted) {
        tick();
        speed = wanted;
    }

    public boolean isGoing() {
        return going;
    }

    public Now now() {
        return timeline.isBegun() ? timeline.now() : Now.START;
    }

    /** Why the clock stopped by itself. */
    public Optional<Halt> halt() {
        return halt;
    }

    /** Everything that was recorded; empty before time was set going. */
    public Optional<Trace> course() {
        return timeline.trace(bench());
    }

    public void go() {
        if (!going && !now().isOver()) {
            begin();
            real.start(press());
            going = true;
        }
    }

    public void pause() {
        tick();
        going = false;
    }

    /** Lets the real time since the last call pass on the bench. */
    public void tick() {
        if (going) {
            real.collect(speed);
            catchUp();
        }
    }

    /** Lets some time pass at once, with the button as it is held, and stops the clock. */
    public void goOn(Press as, double seconds) {
        if (now().isOver()) {
            return;
        }
        pause();
        begin();
        real.ask(as, seconds);
        catchUp();
    }

    /** Shows a moment that was recorded, and stops time there. */
    public void turnTo(double timeS) {
        course().ifPresent(course -> {
            going = false;
            real.forgive();
            RunState then = course.stateAt(timeS);
            timeline.standAt(then);
            shown = shown.at(then.states(), then.press());
        });
    }

    /** Puts time back to the start and forgets what was recorded. */
    public void startOver() {
        era++;
        timeline = new Timeline();
        real = new RealTime(nanoTime, press());
        going = false;
        halt = Optional.empty();
        shown = shown.at(bench().start(), press());
    }

    /**
     * Runs the bench down by the usual presses, from its start to its end. If bench or time are changed meanwhile it
     * is left as it is by then; if this is called off it stands where it had come.
     *
     * @param heard hears after every piece where it stands
     */
    public Work runDown(Consumer<RunState> heard) {
        startOver();
        int mine = era;
        Runner runner = Runner.begin(bench(), RunPlan.USUAL, MOST_EFFORT, PIECE);
        return new Aside(runner, () -> mine == era, () -> heard.accept(runner.state()), () -> {
            RunResult result = runner.result();
            timeline.take(bench(), result);
            shown = shown.at(result.last().states(), result.last().press());
            halt = Optional.of(Halt.atEnd(bench(), result));
        });
    }

    private void begin() {
        era++;
        timeline.begin(bench());
        halt = Optional.empty();
    }

    private void catchUp() {
        if (!real.isAnythingOwed()) {
            return;
        }
        Slice slice = timeline.more(real.takeOwed()).get();
        timeline.add(slice);
        shown = shown.at(slice.end().states(), slice.end().press());
        if (slice.isHalted()) {
            real.forgive();
            going = false;
            halt = Optional.of(Halt.in(bench(), slice));
        }
    }
}
