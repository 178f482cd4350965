package org.sagwise.run;

import java.util.Optional;
import org.sagwise.reading.Bench;

/** How a bench ends if pressed in the usual way: what posts, comparisons and symptoms speak of. */
public final class UsualRun {

    /** Larger packs take longer to simulate than anyone waits for a post. */
    private static final int MOST_CELLS = 8;

    /** Additions and multiplications that it may take: about half a second's worth. */
    private static final double MOST_EFFORT = 4e8;

    private UsualRun() {}

    /** Empty for a bench that is too large to wait for, or that gives nothing. */
    public static Optional<RunResult> of(Bench bench) {
        int cells = bench.cells().size();
        boolean isWorthIt = cells <= MOST_CELLS && bench.fired().pack().givenW() > 0;
        return isWorthIt ? anyway(bench) : Optional.empty();
    }

    /** Of a large bench too, which may be given up before its end; empty for one without cells. */
    public static Optional<RunResult> anyway(Bench bench) {
        return bench.cells().isEmpty()
                ? Optional.empty()
                : Optional.of(Runner.run(bench, RunPlan.USUAL, RunSettings.USUAL, RunProgress.NONE, MOST_EFFORT));
    }
}
