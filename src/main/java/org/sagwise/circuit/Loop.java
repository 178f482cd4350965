package org.sagwise.circuit;

import java.util.List;

/**
 * A closed way through sources and metal alone: no load limits the current in it.
 *
 * @param steps the sources passed, in order
 */
public record Loop(List<Step> steps) {

    public Loop {
        steps = List.copyOf(steps);
    }

    /**
     * A source passed on the way.
     *
     * @param source the source
     * @param up 1 if passed from minus to plus, -1 if from plus to minus
     */
    public record Step(Branch source, int up) {}

    /** Sources passed upwards minus sources passed downwards; 0 in a sound pack. */
    public int climb() {
        return steps.stream().mapToInt(Step::up).sum();
    }

    /** Whether every source in it pushes the same way round, as in a pack with its ends joined. */
    public boolean isRing() {
        return Math.abs(climb()) == steps.size();
    }
}
