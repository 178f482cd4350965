package org.sagwise.picture.stairs;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.reading.Staircase;
import org.sagwise.reading.Staircase.Lane;
import org.sagwise.reading.Staircase.Step;

/** Stairs on the way from one shape to another, so that the eye can follow how they sag. */
public final class StairTween {

    private StairTween() {}

    /**
     * Stairs between two others of the same steps; the later ones at once if the steps differ.
     *
     * @param share 0 for the earlier to 1 for the later
     */
    public static Staircase between(Staircase earlier, Staircase later, double share) {
        if (share >= 1 || !isAlike(earlier, later)) {
            return later;
        }
        List<Lane> lanes = new ArrayList<>();
        for (int i = 0; i < later.lanes().size(); i++) {
            Lane lane = later.lanes().get(i);
            lanes.add(new Lane(
                    steps(earlier.lanes().get(i).steps(), lane.steps(), share), lane.afterStep(), lane.untilStep()));
        }
        return new Staircase(
                steps(earlier.steps(), later.steps(), share),
                lanes,
                mix(earlier.lowestV(), later.lowestV(), share),
                mix(earlier.highestV(), later.highestV(), share));
    }

    private static boolean isAlike(Staircase one, Staircase other) {
        boolean alike = areAlike(one.steps(), other.steps())
                && one.lanes().size() == other.lanes().size();
        for (int i = 0; alike && i < one.lanes().size(); i++) {
            Lane lane = one.lanes().get(i);
            Lane twin = other.lanes().get(i);
            alike = areAlike(lane.steps(), twin.steps())
                    && lane.afterStep() == twin.afterStep()
                    && lane.untilStep() == twin.untilStep();
        }
        return alike;
    }

    private static boolean areAlike(List<Step> one, List<Step> other) {
        if (one.size() != other.size()) {
            return false;
        }
        for (int i = 0; i < one.size(); i++) {
            if (!one.get(i).part().equals(other.get(i).part())
                    || !one.get(i).link().equals(other.get(i).link())) {
                return false;
            }
        }
        return true;
    }

    private static List<Step> steps(List<Step> earlier, List<Step> later, double share) {
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < later.size(); i++) {
            Step from = earlier.get(i);
            Step to = later.get(i);
            steps.add(new Step(
                    to.kind(),
                    to.part(),
                    to.link(),
                    mix(from.fromV(), to.fromV(), share),
                    mix(from.toV(), to.toV(), share),
                    mix(from.currentA(), to.currentA(), share)));
        }
        return steps;
    }

    private static double mix(double from, double to, double share) {
        return from + Math.max(0, share) * (to - from);
    }
}
