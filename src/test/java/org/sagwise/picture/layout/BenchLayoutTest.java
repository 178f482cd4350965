package org.sagwise.picture.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.fixture.Circuits;
import org.sagwise.fixture.RandomCircuits;
import org.sagwise.picture.geometry.GridPoint;
import org.sagwise.picture.geometry.Line;
import org.sagwise.scenario.Placement;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/** What must hold of every layout, of benches that people build and of random ones. */
class BenchLayoutTest {

    static Stream<Scenario> benches() {
        List<Scenario> benches = new ArrayList<>(Benches.all().values());
        for (int seed = 0; seed < 100; seed++) {
            benches.add(RandomCircuits.of(seed, 10));
        }
        return benches.stream();
    }

    @ParameterizedTest
    @MethodSource("benches")
    void of_anyBench_keepsPartsAndFiguresApart(Scenario scenario) {
        List<PartBox> parts = BenchLayout.of(scenario).parts();
        for (int i = 0; i < parts.size(); i++) {
            for (int j = 0; j < i; j++) {
                PartBox one = parts.get(i);
                PartBox other = parts.get(j);
                assertFalse(one.body().intersects(other.body()), one.id() + " " + other.id());
                assertFalse(one.label().intersects(other.body()), one.id() + " " + other.id());
                assertFalse(one.body().intersects(other.label()), one.id() + " " + other.id());
                assertFalse(one.label().intersects(other.label()), one.id() + " " + other.id());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("benches")
    void of_anyBench_leadsEveryLinkFromTerminalToTerminal(Scenario scenario) {
        BenchLayout layout = BenchLayout.of(scenario);
        assertEquals(scenario.links().size(), layout.routes().size());
        for (LinkRoute route : layout.routes()) {
            var link = scenario.links().get(route.link());
            List<GridPoint> points = route.points();
            assertEquals(point(layout, link.from()), points.get(0));
            assertEquals(point(layout, link.to()), points.get(points.size() - 1));
        }
    }

    @ParameterizedTest
    @MethodSource("benches")
    void of_anyBench_leadsNoLinkThroughAPart(Scenario scenario) {
        BenchLayout layout = BenchLayout.of(scenario);
        for (LinkRoute route : layout.routes()) {
            for (int i = 1; i < route.points().size(); i++) {
                GridPoint one = route.points().get(i - 1);
                GridPoint other = route.points().get(i);
                assertTrue(one.x() == other.x() || one.y() == other.y(), "askew: link " + route.link());
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
    void of_anyBench_drawsEveryLinkOnConductors(Scenario scenario) {
        BenchLayout layout = BenchLayout.of(scenario);
        for (LinkRoute route : layout.routes()) {
            double drawn = layout.conductors().stream()
                    .filter(conductor -> conductor.carries(route.link()))
                    .mapToDouble(Conductor::length)
                    .sum();
            assertEquals(length(route), drawn, 1e-9, "link " + route.link());
        }
    }

    @ParameterizedTest
    @MethodSource("benches")
    void of_sameBenchTwice_isTheSame(Scenario scenario) {
        assertEquals(BenchLayout.of(scenario), BenchLayout.of(scenario));
    }

    @ParameterizedTest
    @MethodSource("benches")
    void of_largerText_keepsFiguresApart(Scenario scenario) {
        List<PartBox> parts = BenchLayout.of(scenario, 2).parts();
        for (PartBox one : parts) {
            for (PartBox other : parts) {
                assertTrue(one == other || !one.label().intersects(other.body()), one.id() + " over " + other.id());
            }
        }
    }

    @Test
    void of_parallelPack_standsSideBySideWithButtonEndsUp() {
        BenchLayout layout = BenchLayout.of(Benches.all().get("parallel-3"));
        PartBox first = layout.part("A").orElseThrow();
        for (String id : List.of("A", "B", "C")) {
            assertEquals(first.y(), layout.part(id).orElseThrow().y());
            assertEquals(0, layout.part(id).orElseThrow().quarters());
        }
    }

    @Test
    void of_seriesPack_liesInARowTowardItsPlusEnd() {
        BenchLayout layout = BenchLayout.of(Benches.all().get("series-3"));
        List<PartBox> row = Stream.of("A", "B", "C")
                .map(id -> layout.part(id).orElseThrow())
                .toList();
        for (PartBox cell : row) {
            assertEquals(row.get(0).y(), cell.y());
            assertEquals(1, cell.quarters());
        }
        assertTrue(
                row.get(0).x() < row.get(1).x() && row.get(1).x() < row.get(2).x());
    }

    @Test
    void of_reversedCell_standsTheOtherWayRound() {
        BenchLayout beside = BenchLayout.of(Benches.all().get("parallel-2-reversed"));
        assertEquals(0, beside.part("A").orElseThrow().quarters());
        assertEquals(2, beside.part("B").orElseThrow().quarters());
        BenchLayout row = BenchLayout.of(Benches.all().get("series-3-reversed"));
        assertEquals(3, row.part("B").orElseThrow().quarters());
    }

    @Test
    void of_placedPart_liesWhereItWasPut() {
        Scenario scenario = Circuits.single(Circuits.cell("A", 4.2, 15), 1)
                .withPlacement(Map.of("coil", new Placement(3.2, 11, 88)));
        BenchLayout layout = BenchLayout.of(scenario);
        PartBox coil = layout.part("coil").orElseThrow();
        assertEquals(new GridPoint(120, 440), new GridPoint(coil.x(), coil.y()));
        assertEquals(1, coil.quarters());
    }

    @Test
    void placements_putBackIntoTheScenario_giveTheSameLayout() {
        for (Scenario scenario : Benches.all().values()) {
            BenchLayout layout = BenchLayout.of(scenario);
            assertEquals(layout, BenchLayout.of(scenario.withPlacement(layout.placements())));
        }
    }

    @Test
    void of_partsFarApart_stillJoinsTheirTerminals() {
        Map<String, Placement> far = new LinkedHashMap<>();
        far.put("A", new Placement(-10_000, -10_000, 0));
        far.put("coil", new Placement(10_000, 10_000, 0));
        Scenario scenario = Circuits.single(Circuits.cell("A", 4.2, 15), 1).withPlacement(far);
        assertEquals(scenario.links().size(), BenchLayout.of(scenario).routes().size());
    }

    @Test
    void partAt_andLinkAt_findWhatLiesThere() {
        Scenario scenario = Benches.all().get("single");
        BenchLayout layout = BenchLayout.of(scenario);
        PartBox coil = layout.part("coil").orElseThrow();
        assertEquals("coil", layout.partAt(coil.x() + 5, coil.y()).orElseThrow().id());
        GridPoint middle = layout.route(2).orElseThrow().middle();
        assertEquals(2, layout.linkAt(middle.x() + 3, middle.y() + 3, 8).orElseThrow());
        assertTrue(layout.linkAt(-9999, 0, 8).isEmpty());
    }

    @Test
    void of_partsPlacedOverEachOther_stillLaysOutEveryLink() {
        Random random = new Random(7);
        for (int seed = 0; seed < 30; seed++) {
            Scenario scenario = RandomCircuits.of(seed, 10);
            Map<String, Placement> placement = new LinkedHashMap<>();
            scenario.parts()
                    .forEach(part -> placement.put(
                            part.id(),
                            new Placement(8 * random.nextDouble(), 8 * random.nextDouble(), 90.0 * random.nextInt(4))));
            BenchLayout layout = BenchLayout.of(scenario.withPlacement(placement));
            assertEquals(scenario.links().size(), layout.routes().size());
        }
    }

    private static GridPoint point(BenchLayout layout, TerminalRef ref) {
        TerminalPoint terminal = layout.terminal(ref).orElseThrow();
        return new GridPoint(terminal.x(), terminal.y());
    }

    /** A body without its rim, where conductors end. */
    private static double length(LinkRoute route) {
        double length = 0;
        for (int i = 1; i < route.points().size(); i++) {
            length += route.points().get(i - 1).distance(route.points().get(i));
        }
        return length;
    }
}
