package org.sagwise.run.playback;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.sagwise.reading.Bench;
import org.sagwise.run.RunResult;
import org.sagwise.run.RunSettings;
import org.sagwise.run.RunState;
import org.sagwise.run.Stepper;
import org.sagwise.run.Trace;

/** What a bench has gone through so far, and at which moment of it the clock stands. */
public final class Timeline {

    private Stepper stepper;
    private RunState state;
    private Recording recording;

    public boolean isBegun() {
        return recording != null;
    }

    /** Where the clock stands; empty before it began. */
    public Optional<RunState> state() {
        return Optional.ofNullable(state);
    }

    /**
     * Makes ready to go on from where the clock stands. What came after is forgotten.
     *
     * @param bench what begins, if nothing has begun yet
     */
    public void begin(Bench bench) {
        if (isBegun()) {
            recording.goOnFrom(state);
        } else {
            stepper = new Stepper(bench, RunSettings.USUAL);
            state = stepper.start();
            recording = new Recording(state);
        }
    }

    /** Takes a whole run over, to stand at its end. */
    public void take(Bench bench, RunResult result) {
        stepper = new Stepper(bench, RunSettings.USUAL);
        recording = new Recording(result.trace());
        state = result.last();
    }

    /** How a little more time is computed, on whatever thread. */
    public Supplier<Slice> more(List<Owed.Stretch> due) {
        RunState from = state;
        Stepper with = stepper;
        return () -> Slice.of(with, from, due);
    }

    public void add(Slice slice) {
        slice.legs().forEach(leg -> recording.add(leg.press(), leg.advance()));
        state = slice.end();
    }

    /** Stands at a moment that was recorded. */
    public void standAt(RunState then) {
        state = then;
    }

    public Now now() {
        return Now.of(state, recording.last().timeS());
    }

    /** Everything that was recorded; empty before it began. */
    public Optional<Trace> trace(Bench bench) {
        return Optional.ofNullable(recording).map(kept -> kept.trace(bench));
    }

    /** When the button was pressed for the last time before where the clock stands. */
    public OptionalDouble pressBefore() {
        return recording.pressBefore(state.timeS());
    }

    /** When the button is pressed next. */
    public OptionalDouble pressAfter() {
        return recording.pressAfter(state.timeS());
    }

    public void forget() {
        recording = null;
        state = null;
        stepper = null;
    }
}
