package org.sagwise.picture.stairs;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.sagwise.reading.Staircase.Lane;
import org.sagwise.reading.Staircase.Step;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/**
 * Of more lanes than can be told apart, those that tell most: some of each kind, the rarest kind
 * first. What kind a lane is goes by what its parts are and which way round they stand, never by
 * what flows, so that the choice stays while the button is pressed and time goes.
 */
final class Crowd {

    private Crowd() {}

    /**
     * The lanes to draw, in the order in which they came.
     *
     * @param most how many, 1 or more
     */
    static List<Lane> telling(List<Lane> lanes, int most, Scenario scenario) {
        if (lanes.size() <= most) {
            return lanes;
        }
        Map<String, List<Integer>> kinds = new LinkedHashMap<>();
        for (int i = 0; i < lanes.size(); i++) {
            kinds.computeIfAbsent(kind(lanes.get(i), scenario), each -> new ArrayList<>())
                    .add(i);
        }
        List<List<Integer>> rarest = new ArrayList<>(kinds.values());
        rarest.sort(Comparator.comparingInt(List::size));
        TreeSet<Integer> chosen = new TreeSet<>();
        int left = most;
        for (int k = 0; k < rarest.size() && left > 0; k++) {
            int share = Math.max(1, left / (rarest.size() - k));
            List<Integer> places = rarest.get(k);
            int taken = Math.min(share, places.size());
            for (int i = 0; i < taken; i++) {
                chosen.add(places.get(i * places.size() / taken));
            }
            left -= taken;
        }
        return chosen.stream().map(lanes::get).toList();
    }

    /** The same for lanes that show the same. */
    private static String kind(Lane lane, Scenario scenario) {
        StringBuilder kind = new StringBuilder();
        for (Step step : lane.steps()) {
            kind.append(step.kind());
            scenario.part(step.part()).ifPresent(part -> kind.append(what(part)));
            if (StairOrder.isSource(step.kind()) && step.riseV() < 0) {
                kind.append('-');
            }
        }
        return kind.toString();
    }

    private static String what(Part part) {
        return part.keys().without("id", "label", "mark", "x").values().toString();
    }
}
