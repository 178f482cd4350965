package org.sagwise.picture.stairs;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.sagwise.reading.Staircase;
import org.sagwise.reading.Staircase.Lane;
import org.sagwise.reading.Staircase.Step;
import org.sagwise.scenario.Scenario;

/**
 * The steps in the order in which they are drawn: the way begins at its lowest place, so that the
 * climb comes first, and a lane of cells lies beside cells. A way round a loop may begin anywhere,
 * and a lane between two places lies as well beside one side of the loop as beside the other.
 *
 * @param steps the main way, from its lowest place once round
 * @param lanes what stands beside stretches of it
 */
record StairOrder(List<Step> steps, List<Lane> lanes) {

    /** Ways whose losses differ by less are alike, V. */
    private static final double LEAST_V = 1e-3;

    static StairOrder of(Staircase staircase) {
        int count = staircase.steps().size();
        List<Lane> lanes = new ArrayList<>();
        for (Lane lane : staircase.lanes()) {
            lanes.add(besideItsLike(lane, staircase.steps()));
        }
        int begin = -1;
        for (int i = 0; i < count; i++) {
            int start = i;
            boolean cuts = lanes.stream().anyMatch(lane -> isInside(start, lane, count));
            if (!cuts && (begin < 0 || isLower(staircase.steps(), i, begin))) {
                begin = i;
            }
        }
        return begin < 0 ? new StairOrder(staircase.steps(), staircase.lanes()) : from(begin, staircase.steps(), lanes);
    }

    /** The same with no more lanes than so many, those that tell most. */
    StairOrder showing(int most, Scenario scenario) {
        return new StairOrder(steps, Crowd.telling(lanes, most, scenario));
    }

    private static boolean isLower(List<Step> steps, int place, int than) {
        return steps.get(place).fromV() < steps.get(than).fromV() - 1e-9;
    }

    private static StairOrder from(int begin, List<Step> steps, List<Lane> lanes) {
        List<Step> turned = new ArrayList<>(steps);
        Collections.rotate(turned, -begin);
        int count = steps.size();
        List<Lane> moved = lanes.stream()
                .map(lane -> new Lane(
                        lane.steps(),
                        Math.floorMod(lane.afterStep() - begin, count),
                        end(lane.untilStep() - begin, count)))
                .toList();
        return new StairOrder(turned, moved);
    }

    private static int end(int place, int count) {
        int end = Math.floorMod(place, count);
        return end == 0 ? count : end;
    }

    /** Whether the way would be cut inside the stretch that a lane stands beside. */
    private static boolean isInside(int place, Lane lane, int count) {
        int along = Math.floorMod(place - lane.afterStep(), count);
        int stretch = Math.floorMod(lane.untilStep() - lane.afterStep(), count);
        return stretch != 0 && along > 0 && along < stretch;
    }

    /** A lane with sources beside a stretch without any lies rather beside the other side. */
    private static Lane besideItsLike(Lane lane, List<Step> steps) {
        boolean here = hasSource(steps.subList(lane.afterStep(), lane.untilStep()));
        List<Step> others = new ArrayList<>(steps.subList(lane.untilStep(), steps.size()));
        others.addAll(steps.subList(0, lane.afterStep()));
        if (!hasSource(lane.steps()) || here || !hasSource(others)) {
            return lane;
        }
        List<Step> backward = new ArrayList<>();
        for (Step step : lane.steps()) {
            backward.add(0, turned(step));
        }
        return new Lane(backward, lane.untilStep() % steps.size(), lane.afterStep());
    }

    private static Step turned(Step step) {
        return new Step(step.kind(), step.part(), step.link(), step.toV(), step.fromV(), -step.currentA());
    }

    private static boolean hasSource(List<Step> steps) {
        return steps.stream().anyMatch(step -> isSource(step.kind()));
    }

    static boolean isSource(Staircase.Kind kind) {
        return switch (kind) {
            case CELL, SUPPLY, CHARGER -> true;
            default -> false;
        };
    }

    /**
     * The way on which most is lost: the main one, or the one that goes along a lane with a load in place of the
     * stretch that it stands beside. All have the same rest voltages.
     */
    List<Step> lossiestWay() {
        List<Step> worst = steps;
        for (Lane lane : lanes) {
            boolean hasLoad = lane.steps().stream().anyMatch(step -> step.kind().sort() == Staircase.Sort.LOAD);
            boolean inOrder = lane.afterStep() <= lane.untilStep();
            if (hasLoad && inOrder && !hasSource(steps.subList(lane.afterStep(), lane.untilStep()))) {
                List<Step> way = new ArrayList<>(steps.subList(0, lane.afterStep()));
                way.addAll(lane.steps());
                way.addAll(steps.subList(lane.untilStep(), steps.size()));
                worst = lostV(way) > lostV(worst) + LEAST_V ? way : worst;
            }
        }
        return worst;
    }

    private static double lostV(List<Step> way) {
        return way.stream()
                .filter(step -> step.kind().sort() != Staircase.Sort.LOAD && !isSource(step.kind()))
                .mapToDouble(step -> -step.riseV())
                .sum();
    }

    /** Lowest potential of all steps and lanes, V. */
    double lowestV() {
        return all().stream()
                .mapToDouble(s -> Math.min(s.fromV(), s.toV()))
                .min()
                .orElse(0);
    }

    /** Highest potential of all steps and lanes, V. */
    double highestV() {
        return all().stream()
                .mapToDouble(s -> Math.max(s.fromV(), s.toV()))
                .max()
                .orElse(0);
    }

    private List<Step> all() {
        List<Step> all = new ArrayList<>(steps);
        lanes.forEach(lane -> all.addAll(lane.steps()));
        return all;
    }
}
