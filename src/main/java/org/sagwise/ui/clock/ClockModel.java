package org.sagwise.ui.clock;

import java.util.Optional;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.sagwise.assessment.Assessment;
import org.sagwise.part.PartKind;
import org.sagwise.reading.Bench;
import org.sagwise.run.RunResult;
import org.sagwise.run.RunState;
import org.sagwise.run.Trace;
import org.sagwise.run.playback.Along;
import org.sagwise.run.playback.Halt;
import org.sagwise.run.playback.Now;
import org.sagwise.run.playback.RealTime;
import org.sagwise.run.playback.Remark;
import org.sagwise.run.playback.SameCircuit;
import org.sagwise.run.playback.Slice;
import org.sagwise.run.playback.Speed;
import org.sagwise.run.playback.Timeline;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.kit.LatestTask;
import org.sagwise.ui.kit.Threads;

/**
 * Time on the bench. It stands at the start until it is set going; then it passes with real time,
 * times the speed, with the button as the thumb has it. What is shown everywhere is the moment at
 * which the clock stands. A change of the circuit puts it back to the start.
 *
 * <p>Time is computed behind the scenes; a bench too large to keep up lags behind and blocks
 * nothing. All methods belong to the thread of the window.
 */
public final class ClockModel {

    private final BenchModel shown;
    private final Timeline timeline = new Timeline();
    private final ClockSteps steps = new ClockSteps(this, timeline);
    private final RealTime real;
    private final LatestTask task;
    private final RunDown runDown;
    private final ReadOnlyBooleanWrapper going = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyObjectWrapper<Speed> speed = new ReadOnlyObjectWrapper<>(Speed.ONE);
    private final ReadOnlyObjectWrapper<Now> now = new ReadOnlyObjectWrapper<>(Now.START);
    private final ReadOnlyObjectWrapper<Optional<Halt>> halt = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Remark> remark = new ReadOnlyObjectWrapper<>(Remark.NOTHING);
    private Supplier<Along> along = () -> Along.NOTHING;
    private Bench bench;
    private int opening;

    /**
     * @param shown the bench whose time it is
     * @param nanoTime real time, ns
     */
    public ClockModel(BenchModel shown, Threads threads, LongSupplier nanoTime) {
        this.shown = shown;
        task = new LatestTask(threads);
        runDown = new RunDown(task, threads.front());
        bench = shown.assessment().bench();
        opening = shown.openings();
        real = new RealTime(nanoTime, press());
        shown.button().downProperty().subscribe(this::turned);
        shown.assessmentProperty().subscribe(this::follow);
        askedProperty().subscribe((before, asked) -> {
            if (asked && going.get()) {
                pause();
            }
        });
    }

    /** Whether something is to be foretold first: no time passes then, and its curves stay hidden. */
    ReadOnlyBooleanProperty askedProperty() {
        return shown.button().lockedProperty();
    }

    /** Has something done along with every stretch of time; asked anew for each. */
    void takeAlong(Supplier<Along> other) {
        along = other;
    }

    /** Whether time passes. */
    public ReadOnlyBooleanProperty goingProperty() {
        return going.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<Speed> speedProperty() {
        return speed.getReadOnlyProperty();
    }

    /** The moment that is shown. */
    public ReadOnlyObjectProperty<Now> nowProperty() {
        return now.getReadOnlyProperty();
    }

    /** Why the clock stopped by itself; empty once it goes on. */
    public ReadOnlyObjectProperty<Optional<Halt>> haltProperty() {
        return halt.getReadOnlyProperty();
    }

    /** What there is to tell in passing. */
    public ReadOnlyObjectProperty<Remark> remarkProperty() {
        return remark.getReadOnlyProperty();
    }

    /** Everything that was recorded; empty before time was set going. */
    public Optional<Trace> course() {
        return timeline.trace(bench);
    }

    /** The bench whose time this is. */
    public Bench bench() {
        return bench;
    }

    public void setSpeed(Speed wanted) {
        collect();
        speed.set(wanted);
    }

    /** Sets time going, or stops it. */
    public void toggle() {
        if (going.get()) {
            pause();
        } else {
            go();
        }
    }

    /** Sets time going; where it was turned back, what came after is forgotten. */
    public void go() {
        if (going.get()
                || now.get().isOver()
                || runDown.isRunning()
                || askedProperty().get()) {
            return;
        }
        begin();
        real.start(press());
        going.set(true);
    }

    /** Stops time where it stands. */
    public void pause() {
        collect();
        going.set(false);
        compute();
    }

    /** Lets the real time since the last call pass on the bench. Called about once a frame. */
    public void tick() {
        collect();
        compute();
    }

    /** Takes the word about why the clock stopped away. */
    public void dismiss() {
        halt.set(Optional.empty());
    }

    /** Lets some time pass at once, with the button as it is held, and stops the clock. */
    void goOn(double seconds) {
        if (!now.get().isOver() && !runDown.isRunning()) {
            pause();
            begin();
            real.ask(press(), seconds);
            compute();
        }
    }

    /** Goes through time in steps. */
    public ClockSteps steps() {
        return steps;
    }

    /** Shows a moment that was recorded, and stops time there. */
    public void turnTo(double timeS) {
        if (!timeline.isBegun() || runDown.isRunning()) {
            return;
        }
        stop();
        Trace course = timeline.trace(bench).orElseThrow();
        Assessment base = shown.assessment();
        task.give(() -> {
            RunState then = course.stateAt(timeS);
            Assessment moment = base.at(then.states(), then.press());
            return () -> show(then, moment);
        });
    }

    /** Puts time back to the start and forgets what was recorded. */
    public void reset() {
        forget();
        remark.set(Remark.NOTHING);
        shown.show(shown.assessment().at(bench.start(), press()));
    }

    /** Runs the bench down by the plan, from its start, behind the scenes. */
    public void startRunDown() {
        forget();
        remark.set(Remark.NOTHING);
        runDown.start(shown.assessment(), this::ranDown);
    }

    /** The run-down under way, and the pattern of presses for the next one. */
    public RunDown runDown() {
        return runDown;
    }

    private void ranDown(RunResult result, Assessment moment) {
        timeline.take(bench, result);
        show(result.last(), moment);
        halt.set(Optional.of(Halt.atEnd(bench, result)));
    }

    /** Makes ready to go on from the moment that is shown. */
    private void begin() {
        timeline.begin(bench);
        halt.set(Optional.empty());
        remark.set(Remark.NOTHING);
    }

    private void collect() {
        if (going.get()) {
            real.collect(speed.get());
        }
    }

    private void compute() {
        if (task.isBusy() || !real.isAnythingOwed()) {
            return;
        }
        Supplier<Slice> more = timeline.more(real.takeOwed());
        RunState from = timeline.state().orElseThrow();
        Assessment base = shown.assessment();
        Along other = along.get();
        task.give(() -> {
            Slice slice = more.get();
            Assessment moment = base.at(slice.end().states(), slice.end().press());
            Runnable beside = other.go(from, slice);
            return () -> {
                take(slice, moment);
                beside.run();
            };
        });
    }

    private void take(Slice slice, Assessment moment) {
        boolean asHeld = slice.end().press() == press();
        timeline.add(slice);
        now.set(timeline.now());
        if (asHeld || slice.isHalted()) {
            shown.show(moment);
        }
        if (slice.isHalted()) {
            real.forgive();
            going.set(false);
            halt.set(Optional.of(Halt.in(bench, slice)));
            return;
        }
        Remark.in(bench, slice).ifPresent(remark::set);
        if (!going.get()) {
            compute();
        }
    }

    private void show(RunState then, Assessment moment) {
        timeline.standAt(then);
        now.set(timeline.now());
        shown.show(moment);
    }

    private void turned() {
        if (going.get()) {
            collect();
            real.turn(press());
        } else {
            real.set(press());
        }
    }

    /** Follows what is on the bench: another circuit begins at its own start. */
    private void follow(Assessment assessment) {
        if (assessment.bench() == bench) {
            return;
        }
        Scenario before = bench.scenario();
        bench = assessment.bench();
        boolean opened = shown.openings() != opening;
        opening = shown.openings();
        Optional<RunState> then = timeline.state();
        if (!opened && then.isPresent() && SameCircuit.areSame(before, bench.scenario())) {
            shown.show(assessment.at(then.get().states(), press()));
            return;
        }
        boolean hadBegun = now.get().endS() > 0 || runDown.isRunning();
        forget();
        remark.set(hadBegun && !opened ? Remark.STARTED_OVER : Remark.NOTHING);
    }

    private void stop() {
        going.set(false);
        real.forgive();
        task.callOff();
        halt.set(Optional.empty());
    }

    private void forget() {
        stop();
        runDown.forget();
        timeline.forget();
        now.set(Now.START);
    }

    /** A circuit without a button is always on, as if it were held. */
    private Press press() {
        boolean switched = !bench.scenario().partsOf(PartKind.SWITCH).isEmpty();
        return Press.of(shown.button().isDown() || !switched);
    }
}
