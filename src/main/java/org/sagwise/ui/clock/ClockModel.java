package org.sagwise.ui.clock;

import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;

import org.sagwise.caution.Assessment;
import org.sagwise.reading.Bench;
import org.sagwise.reading.Press;
import org.sagwise.run.RunEvent;
import org.sagwise.run.RunPlan;
import org.sagwise.run.RunResult;
import org.sagwise.run.RunSettings;
import org.sagwise.run.RunState;
import org.sagwise.run.Stepper;
import org.sagwise.run.Trace;
import org.sagwise.scenario.PartKind;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.model.BenchModel;

import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/**
 * Time on the bench. It stands at the start until it is set going; then it passes with real time,
 * times the speed, with the button as the thumb has it. What is shown everywhere is the moment at
 * which the clock stands. A change of the circuit puts it back to the start.
 *
 * <p>Time is computed behind the scenes; a bench too large to keep up lags behind and blocks
 * nothing. All methods belong to the thread of the window.
 */
public final class ClockModel {

    /** Steps that people ask for, s. */
    public static final double STEP_S = 1;

    private final BenchModel shown;
    private final RealTime real;
    private final Desk desk;
    private final RunDown runDown;
    private final ReadOnlyBooleanWrapper going = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyObjectWrapper<Speed> speed = new ReadOnlyObjectWrapper<>(Speed.ONE);
    private final ReadOnlyObjectWrapper<Now> now = new ReadOnlyObjectWrapper<>(Now.START);
    private final ReadOnlyObjectWrapper<Optional<Halt>> halt =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ObjectProperty<RunPlan> plan = new SimpleObjectProperty<>(RunPlan.USUAL);
    private final ReadOnlyObjectWrapper<Aside> aside = new ReadOnlyObjectWrapper<>(Aside.NOTHING);
    private Supplier<Along> along = () -> Along.NOTHING;
    private Bench bench;
    private Stepper stepper;
    private RunState state;
    private Recording recording;

    /**
     * @param shown the bench whose time it is
     * @param nanoTime real time, ns
     */
    public ClockModel(BenchModel shown, Threads threads, LongSupplier nanoTime) {
        this.shown = shown;
        desk = new Desk(threads);
        runDown = new RunDown(desk, threads.front());
        bench = shown.assessment().bench();
        real = new RealTime(nanoTime, press());
        shown.thumb().downProperty().subscribe(this::turned);
        shown.assessmentProperty().subscribe(this::follow);
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
    public ReadOnlyObjectProperty<Aside> asideProperty() {
        return aside.getReadOnlyProperty();
    }

    /** How far a run-down has come; empty while there is none. */
    public ReadOnlyObjectProperty<Optional<Progress>> progressProperty() {
        return runDown.progressProperty();
    }

    /** The pattern of presses by which {@link #runDown()} runs the bench down. */
    public ObjectProperty<RunPlan> planProperty() {
        return plan;
    }

    /** Everything that was recorded; empty before time was set going. */
    public Optional<Trace> course() {
        return Optional.ofNullable(recording).map(kept -> kept.trace(bench));
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
        if (going.get() || now.get().isOver() || runDown.isRunning()) {
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

    /** Goes back to the start; what was recorded stays. */
    public void toStart() {
        turnTo(0);
    }

    /** Goes a second back; stops time. */
    public void stepBack() {
        turnTo(now.get().timeS() - STEP_S);
    }

    /** Goes a second on: along what was recorded, else with the button as it is held. */
    public void stepOn() {
        if (runDown.isRunning()) {
            return;
        }
        if (now.get().isTurnedBack()) {
            turnTo(now.get().timeS() + STEP_S);
        } else if (!now.get().isOver()) {
            pause();
            begin();
            real.ask(press(), STEP_S);
            compute();
        }
    }

    /** Goes back to the press before this moment. */
    public void pressBack() {
        if (recording != null) {
            turnTo(recording.pressBefore(now.get().timeS()).orElse(0));
        }
    }

    /** Goes on to the next press that was recorded, or to the end. */
    public void pressOn() {
        if (recording != null) {
            turnTo(recording.pressAfter(now.get().timeS()).orElse(now.get().endS()));
        }
    }

    /** Shows a moment that was recorded, and stops time there. */
    public void turnTo(double timeS) {
        if (recording == null || runDown.isRunning()) {
            return;
        }
        stop();
        Trace course = recording.trace(bench);
        Assessment base = shown.assessment();
        desk.give(
                () -> {
                    RunState then = course.stateAt(timeS);
                    Assessment moment = base.at(then.states(), then.press());
                    return () -> show(then, moment);
                });
    }

    /** Puts time back to the start and forgets what was recorded. */
    public void reset() {
        forget();
        aside.set(Aside.NOTHING);
        shown.show(shown.assessment().at(bench.start(), press()));
    }

    /** Runs the bench down by the plan, from its start, behind the scenes. */
    public void runDown() {
        forget();
        aside.set(Aside.NOTHING);
        runDown.start(shown.assessment(), plan.get(), this::ranDown);
    }

    /** Calls a run-down off; what it has come to is shown. */
    public void cancelRunDown() {
        runDown.cancel();
    }

    private void ranDown(RunResult result, Assessment moment) {
        stepper = new Stepper(bench, RunSettings.USUAL);
        recording = new Recording(result.trace());
        show(result.last(), moment);
        double endS = result.last().timeS();
        List<RunEvent> lastly =
                result.events().stream().filter(event -> event.atS() >= endS - 1e-6).toList();
        halt.set(Optional.of(new Halt(bench, lastly, Optional.of(result.end()), result.last())));
    }

    /** Makes ready to go on from the moment that is shown. */
    private void begin() {
        if (recording == null) {
            stepper = new Stepper(bench, RunSettings.USUAL);
            state = stepper.start();
            recording = new Recording(state);
        } else {
            recording.goOnFrom(state);
        }
        halt.set(Optional.empty());
        aside.set(Aside.NOTHING);
    }

    private void collect() {
        if (going.get()) {
            real.collect(speed.get());
        }
    }

    private void compute() {
        if (desk.isBusy() || !real.isAnythingOwed()) {
            return;
        }
        List<Owed.Stretch> due = real.takeOwed();
        RunState from = state;
        Stepper with = stepper;
        Assessment base = shown.assessment();
        Along other = along.get();
        desk.give(
                () -> {
                    Slice slice = Slice.of(with, from, due, base);
                    Runnable show = other.go(from, slice);
                    return () -> {
                        take(slice);
                        show.run();
                    };
                });
    }

    private void take(Slice slice) {
        slice.legs().forEach(leg -> recording.add(leg.press(), leg.advance()));
        boolean asHeld = slice.end().press() == press();
        state = slice.end();
        now.set(Now.of(state, state.timeS()));
        if (asHeld || slice.isHalted()) {
            shown.show(slice.moment());
        }
        List<RunEvent> events = slice.events();
        if (!events.isEmpty() && !slice.isHalted()) {
            aside.set(new Aside.Event(bench, events.get(events.size() - 1)));
        }
        if (slice.isHalted()) {
            real.forgive();
            going.set(false);
            halt.set(Optional.of(new Halt(bench, events, Optional.empty(), state)));
        } else if (!going.get()) {
            compute();
        }
    }

    private void show(RunState then, Assessment moment) {
        state = then;
        now.set(Now.of(then, recording.last().timeS()));
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
        boolean opened = shown.history().entries().size() == 1;
        if (!opened && state != null && Circuits.areSame(before, bench.scenario())) {
            shown.show(assessment.at(state.states(), press()));
            return;
        }
        boolean hadBegun = now.get().endS() > 0 || runDown.isRunning();
        forget();
        aside.set(hadBegun && !opened ? Aside.STARTED_OVER : Aside.NOTHING);
    }

    private void stop() {
        going.set(false);
        real.forgive();
        desk.callOff();
        halt.set(Optional.empty());
    }

    private void forget() {
        stop();
        runDown.forget();
        recording = null;
        state = null;
        stepper = null;
        now.set(Now.START);
    }

    /** A circuit without a button is always on, as if it were held. */
    private Press press() {
        boolean switched = !bench.scenario().partsOf(PartKind.SWITCH).isEmpty();
        return shown.thumb().isDown() || !switched ? Press.HELD : Press.RELEASED;
    }
}
