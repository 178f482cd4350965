package org.sagwise.picture.schematic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.fixture.RandomCircuits;
import org.sagwise.picture.Scenes;
import org.sagwise.picture.geometry.GridPoint;
import org.sagwise.picture.geometry.Line;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.picture.layout.LinkRoute;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.layout.TerminalPoint;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Placement;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

class SchematicLayoutTest {

    private static final int MOST_PARTS = 9;

    static Stream<Scenario> benches() {
        return Stream.concat(
                Scenes.scenarios().values().stream(),
                LongStream.rangeClosed(1, 50).mapToObj(s -> RandomCircuits.of(s, MOST_PARTS)));
    }

    @ParameterizedTest
    @MethodSource("benches")
    void of_anyBench_keepsSymbolsAndFiguresApart(Scenario scenario) {
        List<PartBox> parts = schematic(scenario).parts();
        assertEquals(scenario.parts().size(), parts.size());
        for (PartBox one : parts) {
            for (PartBox other : parts.subList(0, parts.indexOf(one))) {
                String pair = one.id() + " " + other.id();
                assertFalse(one.body().intersects(other.body()), pair);
                assertFalse(one.body().intersects(other.label()), pair);
                assertFalse(one.label().intersects(other.body()), pair);
                assertFalse(one.label().intersects(other.label()), pair);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("benches")
    void of_anyBench_drawsEveryJointFromTerminalToTerminal(Scenario scenario) {
        BenchLayout layout = schematic(scenario);
        assertEquals(scenario.links().size(), layout.routes().size());
        for (LinkRoute route : layout.routes()) {
            Link link = scenario.links().get(route.link());
            List<GridPoint> points = route.points();
            assertEquals(point(layout, link.from()), points.get(0));
            assertEquals(point(layout, link.to()), points.get(points.size() - 1));
            assertTrue(
                    layout.conductors().stream().anyMatch(c -> c.carries(route.link())),
                    "nothing drawn for link " + route.link());
        }
    }

    @ParameterizedTest
    @MethodSource("benches")
    void of_anyBench_leadsLinesUprightOrLevelAndAroundSymbols(Scenario scenario) {
        BenchLayout layout = schematic(scenario);
        for (LinkRoute route : layout.routes()) {
            for (int i = 1; i < route.points().size(); i++) {
                GridPoint one = route.points().get(i - 1);
                GridPoint other = route.points().get(i);
                assertTrue(one.x() == other.x() || one.y() == other.y(), "askew: " + route.link());
                for (PartBox part : layout.parts()) {
                    assertFalse(
                            Line.between(one.point(), other.point())
                                    .meets(part.body().grown(-1).box()),
                            "link " + route.link() + " through " + part.id());
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("benches")
    void of_placedBench_heedsTheNetworkAlone(Scenario scenario) {
        Map<String, Placement> placement =
                scenario.parts().stream().collect(Collectors.toMap(part -> part.id(), part -> new Placement(7, 9, 90)));
        assertEquals(schematic(scenario.withPlacement(Map.of())), schematic(scenario.withPlacement(placement)));
    }

    /** Else a picture would show joints that are not there. */
    @ParameterizedTest
    @MethodSource("benches")
    void of_anyBench_linesOfDifferentNetsDoNothingButCross(Scenario scenario) {
        BenchLayout layout = schematic(scenario);
        Map<TerminalRef, Integer> nets = nets(scenario);
        for (LinkRoute one : layout.routes()) {
            for (LinkRoute other : layout.routes()) {
                if (!net(scenario, nets, one).equals(net(scenario, nets, other))) {
                    for (GridPoint corner : one.points()) {
                        assertFalse(
                                isOn(corner, other.points()),
                                "links " + one.link() + " and " + other.link() + " at " + corner);
                    }
                }
            }
        }
    }

    @Test
    void of_bridge_liesInLayersFromPlusToMinus() {
        BenchLayout layout = schematic(Scenes.scenarios().get("bridge"));
        assertEquals(y(layout, "R1"), y(layout, "R2"));
        assertEquals(y(layout, "R3"), y(layout, "R4"));
        assertTrue(y(layout, "R1") < y(layout, "R5"));
        assertTrue(y(layout, "R5") < y(layout, "R3"));
        assertTrue(layout.part("A").orElseThrow().x()
                < layout.part("R1").orElseThrow().x());
    }

    private static int y(BenchLayout layout, String part) {
        return layout.part(part).orElseThrow().y();
    }

    private static Integer net(Scenario scenario, Map<TerminalRef, Integer> nets, LinkRoute route) {
        return nets.get(scenario.links().get(route.link()).from());
    }

    private static boolean isOn(GridPoint point, List<GridPoint> way) {
        for (int i = 1; i < way.size(); i++) {
            if (Line.between(way.get(i - 1).point(), way.get(i).point()).distance(point.x(), point.y()) == 0) {
                return true;
            }
        }
        return false;
    }

    /** A number for every set of terminals that links join. */
    private static Map<TerminalRef, Integer> nets(Scenario scenario) {
        Map<TerminalRef, Integer> nets = new HashMap<>();
        for (Link link : scenario.links()) {
            nets.putIfAbsent(link.from(), nets.size());
            nets.putIfAbsent(link.to(), nets.size());
        }
        for (Link link : scenario.links()) {
            Integer kept = nets.get(link.from());
            Integer gone = nets.get(link.to());
            nets.replaceAll((end, net) -> net.equals(gone) ? kept : net);
        }
        return nets;
    }

    private static BenchLayout schematic(Scenario scenario) {
        return BenchLayout.of(scenario, 1, Drawing.SCHEMATIC);
    }

    private static GridPoint point(BenchLayout layout, TerminalRef ref) {
        TerminalPoint terminal = layout.terminal(ref).orElseThrow();
        return new GridPoint(terminal.x(), terminal.y());
    }
}
