package org.sagwise.ui.clock;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.sagwise.assessment.Assessment;
import org.sagwise.reading.Bench;
import org.sagwise.run.RunEvent;
import org.sagwise.run.RunPlan;
import org.sagwise.run.RunState;
import org.sagwise.run.Trace;
import org.sagwise.run.playback.Along;
import org.sagwise.run.playback.Ending;
import org.sagwise.run.playback.Halt;
import org.sagwise.run.playback.Now;
import org.sagwise.run.playback.Twin;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.kit.LatestTask;
import org.sagwise.ui.kit.Threads;

/**
 * A second bench on one clock with the first: its button goes down when that of the first does, and
 * it is shown at the same moment. Whichever comes to its end first stops the clock. All methods
 * belong to the thread of the window; time is computed behind the scenes.
 */
public final class Companion {

    /**
     * What is shown of the second bench.
     *
     * @param assessment everything about it at this moment
     * @param firedS how long its button has been held by then, s
     * @param firstFiredS how long that of the first has been held by then, s
     * @param ending when it comes to its end, once that is known
     */
    public record Seen(Assessment assessment, double firedS, double firstFiredS, Optional<Ending> ending) {}

    private final ClockModel clock;
    private final BenchModel first;
    private final Function<Scenario, Assessment> assess;
    private final LatestTask task;
    private final ReadOnlyObjectWrapper<Optional<Seen>> seen = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<Ending>> firstEnding = new ReadOnlyObjectWrapper<>(Optional.empty());
    private Optional<Assessment> start = Optional.empty();
    private Optional<Halt> end = Optional.empty();
    private Twin twin;
    private boolean used;

    /**
     * @param assess computes everything about a scenario
     */
    public Companion(ClockModel clock, BenchModel first, Threads threads, Function<Scenario, Assessment> assess) {
        this.clock = clock;
        this.first = first;
        this.assess = assess;
        task = new LatestTask(threads);
        clock.takeAlong(() -> start.map(this::along).orElse(Along.NOTHING));
        first.assessmentProperty().subscribe((before, now) -> follow());
        clock.nowProperty().subscribe((before, now) -> follow());
        clock.haltProperty().subscribe((before, now) -> now.ifPresent(this::stopped));
    }

    /** The second bench; empty while there is none. */
    public ReadOnlyObjectProperty<Optional<Seen>> seenProperty() {
        return seen.getReadOnlyProperty();
    }

    /** When the first bench came to its end. */
    public ReadOnlyObjectProperty<Optional<Ending>> firstEndingProperty() {
        return firstEnding.getReadOnlyProperty();
    }

    /** Puts a bench beside the first, or takes it away. */
    public void accompany(Optional<Scenario> beside) {
        if (beside.equals(start.map(Assessment::scenario))) {
            return;
        }
        task.callOff();
        start = beside.map(assess);
        start.ifPresent(it -> twin = new Twin(it.bench()));
        used = false;
        if (start.isEmpty()) {
            seen.set(Optional.empty());
        }
        follow();
    }

    private void follow() {
        start.ifPresent(this::follow);
    }

    private void follow(Assessment base) {
        Now now = clock.nowProperty().get();
        Optional<Trace> course = clock.course();
        if (now.endS() <= 0 || course.isEmpty()) {
            startOver(base);
            return;
        }
        if (firstEnding.get().filter(end -> end.timeS() > now.endS()).isPresent()) {
            firstEnding.set(Optional.empty());
            end = Optional.empty();
        }
        seen.set(seen.get().map(it -> pressed(it, press())));
        Twin mine = twin;
        used = true;
        Bench firstBench = clock.bench();
        Optional<Halt> ended = end;
        RunPlan plan = clock.runDown().planProperty().get();
        List<Trace.Turn> turns = course.get().turns();
        task.give(() -> {
            RunState then = mine.at(turns, now.timeS(), now.endS());
            Assessment moment = base.at(then.states(), then.press());
            double held = course.get().stateAt(now.timeS()).firedS();
            Optional<Ending> ending = ending(mine, ended, plan);
            Optional<Ending> first = mine.ending().isPresent() && ended.isEmpty()
                    ? ahead(firstBench, turns, now.endS())
                    : Optional.empty();
            return () -> take(new Seen(moment, then.firedS(), held, ending), first);
        });
    }

    /** While time passes both are computed in one go, so that both show the same moment. */
    private Along along(Assessment base) {
        Twin mine = twin;
        used = true;
        List<Trace.Turn> before = clock.course().map(Trace::turns).orElse(List.of());
        return (from, slice) -> {
            double endS = slice.end().timeS();
            RunState then = mine.at(slice.turns(before, from), endS, endS);
            Seen now = new Seen(
                    base.at(then.states(), then.press()),
                    then.firedS(),
                    slice.end().firedS(),
                    mine.ending());
            // Where time has stopped, what is asked for then knows more about ends.
            return () -> {
                if (clock.goingProperty().get()) {
                    take(now, Optional.empty());
                }
            };
        };
    }

    private void startOver(Assessment base) {
        task.callOff();
        if (used) {
            twin = new Twin(base.bench());
            used = false;
        }
        end = Optional.empty();
        firstEnding.set(Optional.empty());
        seen.set(Optional.of(new Seen(base.with(press()), 0, 0, Optional.empty())));
    }

    /** Its own end; or, once the first has come to its end, how long it would go on. */
    private static Optional<Ending> ending(Twin second, Optional<Halt> ended, RunPlan plan) {
        return second.ending()
                .or(() -> ended.flatMap(
                        halt -> halt.end().isPresent() ? Optional.of(second.runDown(plan)) : second.held()));
    }

    /** How long the first bench would go on where the second has come to its end. */
    private static Optional<Ending> ahead(Bench first, List<Trace.Turn> turns, double endS) {
        Twin same = new Twin(first);
        same.at(turns, endS, endS);
        return same.held();
    }

    private void take(Seen now, Optional<Ending> first) {
        seen.set(Optional.of(pressed(now, press())));
        if (end.isEmpty()) {
            firstEnding.set(first);
        }
        if (clock.goingProperty().get()) {
            now.ending().ifPresent(own -> clock.turnTo(own.timeS()));
        }
    }

    private static Seen pressed(Seen seen, Press press) {
        return new Seen(seen.assessment().with(press), seen.firedS(), seen.firstFiredS(), seen.ending());
    }

    /** The first bench has come to its end: how long would the second go on? */
    private void stopped(Halt halt) {
        boolean ends = halt.events().stream().map(RunEvent::kind).anyMatch(Twin::isEnd);
        if (start.isPresent() && (ends || halt.end().isPresent())) {
            end = Optional.of(halt);
            firstEnding.set(Optional.of(Ending.of(halt.state())));
            follow();
        }
    }

    /** As the first bench is shown. */
    private Press press() {
        return first.assessment().readings().press();
    }
}
