package org.sagwise.cli;

import java.util.List;
import java.util.stream.Stream;
import org.sagwise.part.PartKind;
import org.sagwise.reading.Bench;
import org.sagwise.run.Forecast;
import org.sagwise.run.LifeTogether;
import org.sagwise.run.RunPlan;
import org.sagwise.run.RunResult;
import org.sagwise.run.RunSettings;
import org.sagwise.scenario.Press;

/**
 * A run with all that is told about it.
 *
 * @param bench what was run
 * @param plan how
 * @param result what came of it
 * @param outlooks what goes wrong if nobody does anything; none where nothing does
 * @param life how the cells age together; empty if not asked for
 */
record RunReport(Bench bench, RunPlan plan, RunResult result, List<Forecast> outlooks, List<LifeTogether.Age> life) {

    /** A life is told in this many blocks at most. */
    private static final int BLOCKS = 10;

    /**
     * Everything about a run.
     *
     * @param cycles over how many cycles the life of the pack is told; 0 leaves that out
     */
    static RunReport of(Bench bench, RunPlan plan, RunSettings settings, RunResult result, int cycles) {
        Forecast letGo = Forecast.of(bench, settings, Press.RELEASED);
        // Without a button both are the same, and each is six courses.
        boolean hasButton = !bench.scenario().partsOf(PartKind.SWITCH).isEmpty();
        Forecast held = hasButton ? Forecast.of(bench, settings, Press.HELD) : letGo;
        boolean same = letGo.tellsAllOf(held);
        List<Forecast> telling = Stream.of(letGo, held)
                .distinct()
                .filter(forecast -> !forecast.stages().isEmpty())
                .filter(forecast -> !same || forecast == letGo)
                .toList();
        List<LifeTogether.Age> life = cycles == 0
                ? List.of()
                : LifeTogether.course(bench.scenario(), bench.catalogue(), plan, cycles, Math.min(BLOCKS, cycles));
        return new RunReport(bench, plan, result, telling, life);
    }
}
