package org.sagwise.assessment.fix;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.Hazards;
import org.sagwise.part.key.Keys;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.Bench;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalName;
import org.sagwise.scenario.edit.Edit;
import org.sagwise.scenario.edit.SetLinkKeys;
import org.sagwise.scenario.edit.Together;

/** Takes thicker wire for jumpers: the thinnest usual one that bears the current. */
final class ThickerWire implements FixRule {

    /** Even gauges, as they are sold. */
    private static final int[] GAUGES = {28, 26, 24, 22, 20, 18, 16, 14, 12, 10, 8, 6, 4, 2, 0};

    /** Usual cross-sections by IEC 60228, mm². */
    private static final double[] AREAS_MM2 = {0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35};

    private static final double SQUARE_METRE_PER_MM2 = 1e-6;

    @Override
    public List<Fix> fixes(Assessment assessment, Caution caution) {
        Scenario scenario = assessment.scenario();
        List<Integer> places = caution.links().stream()
                .filter(place -> jumper(scenario.links().get(place)) != null)
                .toList();
        if (places.isEmpty()) {
            return List.of();
        }
        List<Link> old = places.stream().map(scenario.links()::get).toList();
        boolean byGauge = places.stream()
                .allMatch(place -> jumper(scenario.links().get(place)).width() instanceof Joint.Awg);
        for (double size : byGauge ? gauges() : AREAS_MM2) {
            UnaryOperator<Keys> width = byGauge ? gauge((int) size) : area(size);
            Scenario changed = changed(scenario, places, width).apply(scenario);
            if (isThicker(scenario, changed, places) && isBorne(assessment.bench(), changed, places)) {
                Object word = byGauge
                        ? String.valueOf((int) size)
                        : new Fix.Quantity(size * SQUARE_METRE_PER_MM2, Unit.SQUARE_METRE);
                FixKind kind = byGauge ? FixKind.THICKER_GAUGE : FixKind.THICKER_AREA;
                return List.of(new Fix(
                        kind,
                        List.of(word, joints(scenario, places)),
                        ids(scenario, places),
                        before -> changed(before, placesOf(before, old), width)));
            }
        }
        return List.of();
    }

    /** Where these joints stand now, should others have been taken away meanwhile. */
    private static List<Integer> placesOf(Scenario scenario, List<Link> wanted) {
        return IntStream.range(0, scenario.links().size())
                .filter(place -> wanted.contains(scenario.links().get(place)))
                .boxed()
                .toList();
    }

    private static double[] gauges() {
        double[] gauges = new double[GAUGES.length];
        for (int i = 0; i < gauges.length; i++) {
            gauges[i] = GAUGES[i];
        }
        return gauges;
    }

    private static Joint.Jumper jumper(Link link) {
        return link.joint() instanceof Joint.Jumper jumper ? jumper : null;
    }

    private static UnaryOperator<Keys> gauge(int number) {
        return keys -> keys.with("awg", number);
    }

    private static UnaryOperator<Keys> area(double mm2) {
        return keys -> keys.without("awg", "diameter_mm").with("area_mm2", mm2);
    }

    private static Edit changed(Scenario scenario, List<Integer> places, UnaryOperator<Keys> width) {
        return new Together(places.stream()
                .<Edit>map(place -> {
                    Keys keys = scenario.links().get(place).keys();
                    return new SetLinkKeys(
                            place,
                            Keys.of("jumper", width.apply(keys.group("jumper").orElseThrow())));
                })
                .toList());
    }

    /** A wire that is replaced by a thinner one would be no cure for it. */
    private static boolean isThicker(Scenario before, Scenario after, List<Integer> places) {
        return places.stream()
                .allMatch(place ->
                        area(after.links().get(place)) > area(before.links().get(place)));
    }

    private static double area(Link link) {
        return jumper(link).width().size().areaM2();
    }

    /** Whether these wires bear what they carry; others have cautions of their own. */
    private static boolean isBorne(Bench bench, Scenario scenario, List<Integer> places) {
        return Hazards.check(Bench.of(scenario, bench.catalogue())).stream()
                .filter(caution -> caution.id().startsWith("jumper-over-"))
                .allMatch(caution -> Collections.disjoint(caution.links(), places));
    }

    private static Fix.Joints joints(Scenario scenario, List<Integer> places) {
        return new Fix.Joints(places.stream()
                .map(scenario.links()::get)
                .map(link -> List.of(TerminalName.of(scenario, link.from()), TerminalName.of(scenario, link.to())))
                .toList());
    }

    private static Set<String> ids(Scenario scenario, List<Integer> places) {
        Set<String> ids = new LinkedHashSet<>();
        places.forEach(place -> scenario.links().get(place).id().ifPresent(ids::add));
        return ids;
    }
}
