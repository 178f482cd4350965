package org.sagwise.reading;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.sagwise.network.Element;
import org.sagwise.part.PartKind;
import org.sagwise.part.Role;

/**
 * Finds the way of the current: one loop through the load that takes most, then every cell and
 * branch beside it as a lane.
 */
final class StairTracer {

    /** A load with less than this share of the largest current is not what the circuit is about. */
    private static final double LEAST_SHARE = 1e-3;

    /** A joint with more than this share of the largest current is a way of its own. */
    private static final double LARGE_SHARE = 0.05;

    private final Bench bench;
    private final Moment moment;
    private final Ways ways;

    StairTracer(Bench bench, Moment moment) {
        this.bench = bench;
        this.moment = moment;
        this.ways = Ways.of(moment);
    }

    /**
     * A stretch beside the main loop.
     *
     * @param ways its elements in the direction of the main loop
     * @param start node of the main loop where it begins
     * @param afterWay number of elements of the main loop before it begins
     * @param untilWay number of elements of the main loop before it ends
     */
    record Beside(List<Ways.Way> ways, int start, int afterWay, int untilWay) {}

    /**
     * The main loop in the direction of the current, starting at the reference where it can. Where
     * no ring is closed it is the climb to where a joint is missing, and does not come back.
     */
    List<Ways.Way> loop() {
        List<Ways.Way> flowing = start().map(this::around).orElse(List.of());
        return flowing.isEmpty()
                ? new StillRing(ways).through(loads()).map(this::fromReference).orElseGet(this::openClimb)
                : fromReference(flowing);
    }

    private List<Ways.Way> openClimb() {
        return moment.circuit().network().referencePreference().stream()
                .findFirst()
                .map(node -> new OpenClimb(ways, moment.point()::potentialV).from(ways.merged(node)))
                .orElse(List.of());
    }

    private List<Ways.Way> loads() {
        return ways.all().stream().filter(this::isLoad).toList();
    }

    private Optional<Ways.Way> start() {
        double largest =
                ways.all().stream().mapToDouble(Ways.Way::currentA).max().orElse(0);
        Comparator<Ways.Way> byCurrent = Comparator.comparingDouble(Ways.Way::currentA);
        return ways.all().stream()
                .filter(way -> isLoad(way) && way.isFlowing())
                .filter(way -> way.currentA() > LEAST_SHARE * largest)
                .max(Comparator.comparingDouble(this::power))
                .or(() -> ways.all().stream().filter(Ways.Way::isFlowing).max(byCurrent));
    }

    private double power(Ways.Way way) {
        return way.currentA()
                * Math.abs(
                        moment.point().potentialV(way.from()) - moment.point().potentialV(way.to()));
    }

    private boolean isLoad(Ways.Way way) {
        PartKind kind = kind(way);
        return kind != null && kind.role() == Role.LOAD;
    }

    private PartKind kind(Ways.Way way) {
        String part = moment.circuit().owners().get(way.element()).part();
        return part.isEmpty() ? null : bench.part(part).kind();
    }

    /**
     * Upstream from the load until its own other end, or any node met before, comes round again.
     */
    private List<Ways.Way> around(Ways.Way load) {
        List<Ways.Way> upstream = new ArrayList<>(List.of(load));
        Set<Integer> met = new HashSet<>();
        int node = load.from();
        while (node != load.to() && met.add(node)) {
            Optional<Ways.Way> next = ways.mostInto(node);
            if (next.isEmpty()) {
                return List.of();
            }
            upstream.add(next.get());
            node = next.get().from();
        }
        int closing = node;
        if (closing != load.to()) {
            int first = firstLeaving(upstream, closing);
            upstream = upstream.subList(first, upstream.size());
        }
        List<Ways.Way> downstream = new ArrayList<>(upstream);
        Collections.reverse(downstream);
        return downstream;
    }

    /** Where a loop that does not pass the load closes: the way whose upstream end is this node. */
    private static int firstLeaving(List<Ways.Way> upstream, int node) {
        for (int i = 0; i < upstream.size(); i++) {
            if (upstream.get(i).from() == node) {
                return i + 1;
            }
        }
        return 0;
    }

    private List<Ways.Way> fromReference(List<Ways.Way> loop) {
        int lowest = 0;
        for (int i = 0; i < loop.size(); i++) {
            double here = moment.point().potentialV(loop.get(i).from());
            double best = moment.point().potentialV(loop.get(lowest).from());
            if (isReference(loop.get(i).from())) {
                lowest = i;
                break;
            }
            lowest = here < best ? i : lowest;
        }
        List<Ways.Way> turned = new ArrayList<>(loop.subList(lowest, loop.size()));
        turned.addAll(loop.subList(0, lowest));
        return turned;
    }

    private boolean isReference(int node) {
        return moment.circuit().network().referencePreference().stream()
                .limit(1)
                .anyMatch(reference -> ways.merged(reference) == node);
    }

    /** Every cell, load, supply and board that the loop leaves out but that shares its nodes. */
    List<Beside> beside(List<Ways.Way> loop) {
        Map<Integer, Integer> placeOf = new LinkedHashMap<>();
        for (int i = 0; i < loop.size(); i++) {
            placeOf.putIfAbsent(loop.get(i).from(), i);
        }
        Set<Integer> used = new HashSet<>();
        loop.forEach(way -> used.add(way.element()));
        List<Beside> found = new ArrayList<>();
        for (Ways.Way way : candidates()) {
            if (!used.contains(way.element())) {
                lane(way, placeOf, loop.size()).ifPresent(lane -> {
                    found.add(lane);
                    lane.ways().forEach(part -> used.add(part.element()));
                });
            }
        }
        return found;
    }

    /**
     * What may be worth a lane, in the order in which lanes are given: sources and loads, then any
     * joint that carries much, such as a clip across the coil.
     */
    private List<Ways.Way> candidates() {
        double largest =
                ways.all().stream().mapToDouble(Ways.Way::currentA).max().orElse(0);
        List<Ways.Way> flowing = ways.all().stream().filter(Ways.Way::isFlowing).toList();
        List<Ways.Way> found =
                new ArrayList<>(flowing.stream().filter(this::isMain).toList());
        flowing.stream()
                .filter(way -> !isMain(way) && way.currentA() > LARGE_SHARE * largest)
                .forEach(found::add);
        return found;
    }

    private boolean isMain(Ways.Way way) {
        Element element = moment.circuit().network().elements().get(way.element());
        return !(element instanceof Element.Resistance) || isLoad(way);
    }

    private Optional<Beside> lane(Ways.Way way, Map<Integer, Integer> placeOf, int length) {
        List<Ways.Way> steps = new ArrayList<>(List.of(way));
        Set<Integer> met = new HashSet<>();
        int start = way.from();
        while (!placeOf.containsKey(start) && met.add(start)) {
            Optional<Ways.Way> next = ways.mostInto(start);
            if (next.isEmpty()) {
                return Optional.empty();
            }
            steps.add(0, next.get());
            start = next.get().from();
        }
        int end = way.to();
        while (!placeOf.containsKey(end) && met.add(end)) {
            Optional<Ways.Way> next = ways.mostOutOf(end);
            if (next.isEmpty()) {
                return Optional.empty();
            }
            steps.add(next.get());
            end = next.get().to();
        }
        if (!placeOf.containsKey(start) || !placeOf.containsKey(end) || start == end) {
            return Optional.empty();
        }
        return Optional.of(alongLoop(steps, start, end, placeOf, length));
    }

    /** The lane in the direction of the loop: turned round where its current flows against it. */
    private static Beside alongLoop(
            List<Ways.Way> steps, int start, int end, Map<Integer, Integer> placeOf, int length) {
        int from = placeOf.get(start);
        int to = placeOf.get(end) == 0 ? length : placeOf.get(end);
        if (from < to && !(from == 0 && to == length)) {
            return new Beside(steps, start, from, to);
        }
        if (from == 0 && to == length) {
            return new Beside(steps, start, 0, length);
        }
        List<Ways.Way> turned = new ArrayList<>(steps);
        Collections.reverse(turned);
        return new Beside(turned, end, placeOf.get(end), from == 0 ? length : from);
    }
}
