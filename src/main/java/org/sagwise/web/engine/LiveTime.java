package org.sagwise.web.engine;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import org.sagwise.run.RunPlan;
import org.sagwise.run.RunResult;
import org.sagwise.run.RunState;
import org.sagwise.run.Runner;
import org.sagwise.run.Trace;
import org.sagwise.run.Work;
import org.sagwise.run.playback.Halt;
import org.sagwise.run.playback.Now;
import org.sagwise.run.playback.RealTime;
import org.sagwise.run.playback.Slice;
import org.sagwise.run.playback.Speed;
import org.sagwise.run.playback.Timeline;
import org.sagwise.scenario.Press;

/** Time on a live bench: it is let run, stopped, turned back, and the bench stands at its moment. */
public final class LiveTime {

    /** Additions and multiplications after which a run-down is given up: a page must not hang. */
    private static final double MOST_EFFORT = 2e9;

    /** So many of them at a time: some ten milliseconds' worth in a browser. */
    private static final double PIECE = 1e6;

    private final LiveBench bench;
    private final LongSupplier nanoTime;
    private int era;
    private Timeline timeline = new Timeline();
    private RealTime real;
    private Speed speed = Speed.ONE;
    private boolean going;
    private Optional<Halt> halt = Optional.empty();

    /**
     * @param nanoTime real time, ns
     */
    LiveTime(LiveBench bench, LongSupplier nanoTime) {
        this.bench = bench;
        this.nanoTime = nanoTime;
        real = new RealTime(nanoTime, Press.RELEASED);
    }

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
        return timeline.trace(bench.bench());
    }

    /** What the bench has become by now; empty before time was set going. */
    Optional<RunState> state() {
        return timeline.state();
    }

    public void go() {
        if (!going && !now().isOver()) {
            begin();
            real.start(bench.press());
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

    /** The button turns while time passes. */
    void turn(Press press) {
        real.collect(speed);
        real.turn(press);
        catchUp();
    }

    /** The button turns while time stands. */
    void set(Press press) {
        real.set(press);
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
            bench.stand(then);
        });
    }

    /** Puts time back to the start and forgets what was recorded. */
    public void startOver() {
        era++;
        timeline = new Timeline();
        real = new RealTime(nanoTime, bench.press());
        going = false;
        halt = Optional.empty();
        bench.standAtStart();
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
        Runner runner = Runner.begin(bench.bench(), RunPlan.USUAL, MOST_EFFORT, PIECE);
        return new AsideWork(runner, () -> mine == era, () -> heard.accept(runner.state()), () -> {
            RunResult result = runner.result();
            timeline.take(bench.bench(), result);
            bench.stand(result.last());
            halt = Optional.of(Halt.atEnd(bench.bench(), result));
        });
    }

    private void begin() {
        era++;
        timeline.begin(bench.bench());
        halt = Optional.empty();
    }

    private void catchUp() {
        if (!real.isAnythingOwed()) {
            return;
        }
        Slice slice = timeline.more(real.takeOwed()).get();
        timeline.add(slice);
        bench.stand(slice.end());
        if (slice.isHalted()) {
            real.forgive();
            going = false;
            halt = Optional.of(Halt.in(bench.bench(), slice));
        }
    }
}
