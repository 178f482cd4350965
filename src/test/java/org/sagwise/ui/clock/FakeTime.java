package org.sagwise.ui.clock;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import org.sagwise.assessment.Assessment;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.ScenarioReader;
import org.sagwise.part.Catalogue;
import org.sagwise.run.playback.Now;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.document.FireButtonState;
import org.sagwise.ui.kit.Threads;
import org.sagwise.ui.start.Example;
import org.sagwise.ui.start.ExampleBenches;

/** A bench with a clock whose real time only passes when the test says so. */
final class FakeTime {

    private static final Catalogue CATALOGUE = CatalogueLoader.builtIn();
    private static final List<Example> EXAMPLES = ExampleBenches.all(new ScenarioReader(CATALOGUE));
    private static final double FRAME_S = 0.05;

    final BenchModel bench;
    final ClockModel clock;
    private final Deque<Runnable> waiting = new ArrayDeque<>();
    private boolean slow;
    private long nanos = 5;

    FakeTime(String example) {
        this(scenario(example));
    }

    FakeTime(Scenario scenario) {
        bench = new BenchModel(FakeTime::assess, scenario);
        clock = new ClockModel(bench, threads(), () -> nanos);
    }

    static Assessment assess(Scenario scenario) {
        return Assessment.of(scenario, CATALOGUE);
    }

    Threads threads() {
        return new Threads(this::work, Runnable::run);
    }

    static Scenario scenario(String example) {
        return EXAMPLES.stream()
                .filter(each -> each.name().equals(example))
                .findFirst()
                .orElseThrow()
                .scenario(Locale.ENGLISH);
    }

    private void work(Runnable job) {
        if (slow) {
            waiting.add(job);
        } else {
            job.run();
        }
    }

    /** From now on work behind the scenes waits until {@link #catchUp()}. */
    void slowDown() {
        slow = true;
    }

    void catchUp() {
        slow = false;
        while (!waiting.isEmpty()) {
            waiting.poll().run();
        }
    }

    /** One piece of the work that waits is done; what it asks for waits again. */
    void catchUpByOne() {
        waiting.remove().run();
    }

    /** Lets real time pass, frame by frame. */
    void pass(double seconds) {
        long frames = Math.round(seconds / FRAME_S);
        for (long frame = 0; frame < frames; frame++) {
            let(FRAME_S);
            clock.tick();
        }
    }

    /** Lets real time pass without a frame. */
    void let(double seconds) {
        nanos += Math.round(seconds * 1e9);
    }

    void press() {
        bench.button().press(FireButtonState.Hold.KEY);
    }

    void release() {
        bench.button().release(FireButtonState.Hold.KEY);
    }

    Now now() {
        return clock.nowProperty().get();
    }

    double coilW() {
        return bench.assessment().readings().coils().get(0).powerW();
    }

    double sagV() {
        return bench.assessment().readings().cells().get(0).sagV();
    }

    double charge() {
        return bench.assessment().states().cells().get("A").charge();
    }
}
