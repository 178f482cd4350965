package org.sagwise.picture.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.fixture.Circuits;
import org.sagwise.part.PartKind;
import org.sagwise.picture.Drawn;
import org.sagwise.picture.Scenes;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.GridPoint;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.picture.scene.Detail;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Probes;
import org.sagwise.scenario.Scenario;

/** Words and flags of a bench stand over no other words, wires or parts. */
class OverlapTest {

    private static final int RANDOM_BENCHES = 200;

    /** The bench in a picture for a forum. */
    private static final double PANEL_WIDTH = 1000;

    private static final double PANEL_HEIGHT = 400;

    /** A hair's breadth of the letters' empty corners, bench units. */
    private static final double TOUCHING = 1.5;

    /** Half of the width of a usual wire, bench units. */
    private static final double WIRE = 4;

    private static Stream<String> names() {
        return benches().keySet().stream();
    }

    private static Map<String, Scenario> benches() {
        Map<String, Scenario> benches = new LinkedHashMap<>(Scenes.scenarios());
        for (int seed = 0; seed < RANDOM_BENCHES; seed++) {
            benches.put("random-" + seed, random(new Random(seed)));
        }
        return benches;
    }

    /** A bench such as people build: rows side by side, a button, one to three coils, and now and then a mistake. */
    private static Scenario random(Random random) {
        int rows = 1 + random.nextInt(3);
        int each = 1 + random.nextInt(3);
        List<Part> parts = new ArrayList<>();
        List<Link> links = new ArrayList<>();
        List<String> tops = new ArrayList<>();
        List<String> ends = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            String before = null;
            for (int at = 0; at < each; at++) {
                String id = String.valueOf((char) ('A' + row * each + at));
                parts.add(Circuits.cell(id, 3.2 + random.nextDouble(), 15 + random.nextInt(60)));
                boolean turned = random.nextInt(9) == 0;
                String high = id + (turned ? ".-" : ".+");
                if (before == null) {
                    tops.add(high);
                } else {
                    links.add(Circuits.touch(before, high, 3 + random.nextInt(200)));
                }
                before = id + (turned ? ".+" : ".-");
            }
            ends.add(before);
        }
        for (int row = 1; row < rows; row++) {
            links.add(Circuits.touch(tops.get(row - 1), tops.get(row), 3));
            links.add(Circuits.touch(ends.get(row - 1), ends.get(row), 3));
        }
        parts.add(Circuits.button(3 + random.nextInt(40)));
        links.add(Circuits.jumper(tops.get(0), "fire.1", 14 + random.nextInt(16), 40 + random.nextInt(200)));
        int coils = 1 + random.nextInt(3);
        for (int coil = 0; coil < coils; coil++) {
            String id = "coil" + coil;
            parts.add(Part.of(id, PartKind.COIL, "ohm", 0.1 + random.nextInt(20) / 10.0));
            links.add(
                    random.nextBoolean()
                            ? Circuits.jumper("fire.2", id + ".1", 20, 30)
                            : Circuits.touch("fire.2", id + ".1", 5 + random.nextInt(200)));
            links.add(Circuits.jumper(id + ".2", ends.get(rows - 1), 18, 50));
        }
        Scenario bench = Scenario.of("Random", parts, links);
        if (random.nextInt(3) == 0) {
            bench = bench.withProbes(
                    Optional.of(Probes.of(Circuits.terminal(tops.get(0)), Circuits.terminal(ends.get(rows - 1)))));
        }
        return random.nextInt(4) == 0 ? bench : bench.pressed();
    }

    @ParameterizedTest
    @MethodSource("names")
    void bench_ofEveryKind_hasNoWordsOrFlagsOverAnything(String name) {
        Scenario scenario = benches().get(name);
        for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            BenchScene scene = Scenes.of(scenario, Theme.LIGHT, locale, 1);
            assertEquals(List.of(), overlaps(scene), name);
        }
    }

    static List<String> overlaps(BenchScene scene) {
        BenchView view = LegendPainter.fit(scene, PANEL_WIDTH, PANEL_HEIGHT);
        Drawn drawn = new Drawn();
        StillPainter.paint(drawn, scene.with(Detail.usual()), view);
        record Thing(String what, Box place) {}
        List<Thing> words = new ArrayList<>();
        for (Drawn.Words each : drawn.words()) {
            words.add(new Thing("\"" + each.text() + "\"", onTheBench(each.place(), view)));
        }
        List<Thing> things = new ArrayList<>();
        scene.layout().routes().forEach(route -> {
            for (int i = 1; i < route.points().size(); i++) {
                GridPoint one = route.points().get(i - 1);
                GridPoint other = route.points().get(i);
                Box line = Box.between(
                                Math.min(one.x(), other.x()),
                                Math.min(one.y(), other.y()),
                                Math.max(one.x(), other.x()),
                                Math.max(one.y(), other.y()))
                        .grown(WIRE);
                things.add(new Thing("wire " + route.link(), line));
            }
        });
        List<String> found = new ArrayList<>();
        for (int i = 0; i < words.size(); i++) {
            Thing one = words.get(i);
            for (Thing other : words.subList(i + 1, words.size())) {
                if (isOver(one.place(), other.place())) {
                    found.add(one.what() + " over " + other.what());
                }
            }
            for (Thing thing : things) {
                if (isOver(one.place(), thing.place())) {
                    found.add(one.what() + " over " + thing.what());
                }
            }
            for (PartBox part : scene.layout().parts()) {
                Box body = part.body().box();
                if (isOver(one.place(), body) && !body.grown(1).contains(one.place())) {
                    found.add(one.what() + " over part " + part.id());
                }
            }
        }
        for (FlagPlaces.Place flag : FlagPlaces.of(scene)) {
            Box cloth = flag.box();
            for (Thing thing : Stream.concat(words.stream(), things.stream()).toList()) {
                if (isOver(cloth, thing.place())) {
                    found.add("flag over " + thing.what());
                }
            }
        }
        return found;
    }

    private static Box onTheBench(Box place, BenchView view) {
        return new Box(
                view.left() + place.x() / view.scale(),
                view.top() + place.y() / view.scale(),
                place.width() / view.scale(),
                place.height() / view.scale());
    }

    private static boolean isOver(Box one, Box other) {
        Box common = one.common(other);
        return common.width() > TOUCHING && common.height() > TOUCHING;
    }
}
