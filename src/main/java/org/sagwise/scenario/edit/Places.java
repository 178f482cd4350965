package org.sagwise.scenario.edit;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Placement;

/** Changes where a part lies, and keeps whatever else is written about its place. */
final class Places {

    /** Farthest place that the format takes, in grid units. */
    private static final double FARTHEST = 10_000;

    private static final double FULL_TURN = 360;

    private Places() {}

    static Placement moved(Placement place, double dx, double dy) {
        return at(place, place.x() + dx, place.y() + dy);
    }

    static Placement at(Placement place, double x, double y) {
        return Placement.of(place.keys().with("x", inside(x)).with("y", inside(y)));
    }

    /** Turned clockwise; the result lies from 0 to below 360 degrees. */
    static Placement turned(Placement place, double degrees) {
        double turn = (place.turnDegrees() + degrees) % FULL_TURN;
        Keys keys = place.keys().with("turn", turn < 0 ? turn + FULL_TURN : turn);
        return Placement.of(keys);
    }

    /**
     * Places of which those of some parts are turned clockwise; a part without place stays without.
     */
    static Map<String, Placement> turned(Map<String, Placement> before, Set<String> ids, double degrees) {
        Map<String, Placement> places = new LinkedHashMap<>(before);
        ids.forEach(id -> places.computeIfPresent(id, (same, place) -> turned(place, degrees)));
        return places;
    }

    private static double inside(double value) {
        return Math.max(-FARTHEST, Math.min(FARTHEST, value));
    }
}
