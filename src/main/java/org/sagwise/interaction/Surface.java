package org.sagwise.interaction;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.layout.TerminalPoint;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Placement;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/**
 * The bench as hands feel it: what lies where.
 *
 * @param scenario what lies there
 * @param layout where
 */
public record Surface(Scenario scenario, BenchLayout layout) {

    /** The terminal nearest to a point, no farther than a distance; bench units. */
    public Optional<TerminalRef> terminalAt(double x, double y, double reach) {
        return terminals().stream()
                .filter(point -> distance(point, x, y) <= reach)
                .min(Comparator.comparingDouble(point -> distance(point, x, y)))
                .map(TerminalPoint::ref);
    }

    /**
     * The probe whose handle is nearest to a point, no farther than a distance, unless a terminal
     * is nearer still; bench units.
     */
    public Optional<Tool.Probe> probeAt(double x, double y, double reach) {
        double nearest = Math.min(
                reach,
                terminals().stream()
                        .mapToDouble(point -> distance(point, x, y))
                        .min()
                        .orElse(reach));
        return layout.probes().flatMap(box -> {
            double red = box.redHandle().distance(x, y);
            double black = box.blackHandle().distance(x, y);
            return Math.min(red, black) > nearest
                    ? Optional.empty()
                    : Optional.of(red <= black ? Tool.Probe.RED : Tool.Probe.BLACK);
        });
    }

    private static double distance(TerminalPoint point, double x, double y) {
        return Math.hypot(point.x() - x, point.y() - y);
    }

    private List<TerminalPoint> terminals() {
        return layout.parts().stream().flatMap(box -> box.terminals().stream()).toList();
    }

    /** Parts that lie whole within a frame. */
    Set<String> within(Box frame) {
        return layout.parts().stream()
                .filter(box -> frame.contains(box.body().box()))
                .map(PartBox::id)
                .collect(Collectors.toSet());
    }

    /** How parts come to lie that are let go this far from where they lay. */
    Snap snapped(Set<String> ids, double dx, double dy) {
        Map<Boolean, List<TerminalPoint>> sides = terminals().stream()
                .collect(Collectors.partitioningBy(
                        point -> ids.contains(point.ref().part())));
        return Snap.of(sides.get(true), sides.get(false), dx, dy);
    }

    /** How a part from the shelf comes to lie that is let go with its middle here. */
    Snap snapped(Part part, int quarters, double x, double y) {
        return Snap.of(pointsOf(part, quarters), terminals(), x, y);
    }

    /** What helps to let go of what is in the hand. */
    Guides guides(Tool tool) {
        if (tool instanceof Tool.Fresh fresh) {
            Snap snap = snapped(fresh.part(), fresh.quarters(), fresh.x(), fresh.y());
            return Guides.of(snap, List.of(new Point(fresh.x(), fresh.y())), layout.parts());
        }
        if (tool instanceof Tool.Lifted lifted && (lifted.dx() != 0 || lifted.dy() != 0)) {
            Map<Boolean, List<PartBox>> sides = layout.parts().stream()
                    .collect(Collectors.partitioningBy(box -> lifted.ids().contains(box.id())));
            List<Point> middles = sides.get(true).stream()
                    .map(box -> new Point(box.x() + lifted.dx(), box.y() + lifted.dy()))
                    .toList();
            return Guides.of(snapped(lifted.ids(), lifted.dx(), lifted.dy()), middles, sides.get(false));
        }
        return Guides.NONE;
    }

    private static List<TerminalPoint> pointsOf(Part part, int quarters) {
        Scenario alone = Scenario.of("", List.of(part), List.of())
                .withPlacement(Map.of(part.id(), new Placement(0, 0, quarters * 90.0)));
        return BenchLayout.of(alone).parts().get(0).terminals();
    }

    /** Whether two terminals are joined directly. */
    boolean isJoined(TerminalRef one, TerminalRef other) {
        return scenario.links().stream().anyMatch(link -> joins(link, one, other));
    }

    private static boolean joins(Link link, TerminalRef one, TerminalRef other) {
        return link.from().equals(one) && link.to().equals(other)
                || link.from().equals(other) && link.to().equals(one);
    }

    /** The other end of a link that ends at a terminal. */
    Optional<TerminalRef> otherEnd(int link, TerminalRef end) {
        return Optional.of(link)
                .filter(place -> place < scenario.links().size())
                .map(scenario.links()::get)
                .filter(it -> it.from().equals(end) || it.to().equals(end))
                .map(it -> it.from().equals(end) ? it.to() : it.from());
    }

    /** Where a part lies now. */
    Optional<Placement> placeOf(String id) {
        return Optional.ofNullable(layout.placements().get(id));
    }
}
