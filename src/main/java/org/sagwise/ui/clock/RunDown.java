package org.sagwise.ui.clock;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BiConsumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import org.sagwise.assessment.Assessment;
import org.sagwise.run.RunPlan;
import org.sagwise.run.RunProgress;
import org.sagwise.run.RunResult;
import org.sagwise.run.RunSettings;
import org.sagwise.run.RunState;
import org.sagwise.run.Runner;
import org.sagwise.run.playback.Progress;
import org.sagwise.ui.kit.LatestTask;

/** Runs a bench down behind the scenes, tells how far it has come, and can be called off. */
public final class RunDown {

    private final LatestTask task;
    private final Executor front;
    private final ReadOnlyObjectWrapper<Optional<Progress>> progress = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ObjectProperty<RunPlan> plan = new SimpleObjectProperty<>(RunPlan.USUAL);
    private AtomicBoolean goesOn = new AtomicBoolean();

    RunDown(LatestTask task, Executor front) {
        this.task = task;
        this.front = front;
    }

    /** The pattern of presses by which the bench is run down. */
    public ObjectProperty<RunPlan> planProperty() {
        return plan;
    }

    /** How far a run-down has come; empty while there is none. */
    public ReadOnlyObjectProperty<Optional<Progress>> progressProperty() {
        return progress.getReadOnlyProperty();
    }

    boolean isRunning() {
        return progress.get().isPresent();
    }

    /**
     * Starts a run.
     *
     * @param done takes the result and everything that is shown of its end
     */
    void start(Assessment from, BiConsumer<RunResult, Assessment> done) {
        RunPlan by = plan.get();
        AtomicBoolean mine = new AtomicBoolean(true);
        goesOn = mine;
        progress.set(Optional.of(Progress.START));
        RunProgress heard = hearing(mine);
        task.give(() -> {
            RunResult result = Runner.run(from.bench(), by, RunSettings.USUAL, heard);
            Assessment moment = from.at(result.last().states(), result.last().press());
            return () -> {
                progress.set(Optional.empty());
                done.accept(result, moment);
            };
        });
    }

    /** Ends the run under way as it stands; what it has come to is shown. */
    public void cancel() {
        goesOn.set(false);
    }

    /** Ends the run under way; its result is of no interest any more. */
    void forget() {
        cancel();
        progress.set(Optional.empty());
    }

    /** Many presses a second are computed; only the newest is shown. */
    private RunProgress hearing(AtomicBoolean mine) {
        AtomicReference<RunState> newest = new AtomicReference<>();
        AtomicReference<Double> startCharge = new AtomicReference<>();
        return state -> {
            startCharge.compareAndSet(null, Progress.emptiest(state));
            if (newest.getAndSet(state) == null) {
                front.execute(() -> {
                    RunState last = newest.getAndSet(null);
                    if (mine == goesOn && isRunning()) {
                        progress.set(Optional.of(Progress.of(last, startCharge.get())));
                    }
                });
            }
            return mine.get();
        };
    }
}
