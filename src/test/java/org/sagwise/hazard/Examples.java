package org.sagwise.hazard;

import static org.sagwise.fixture.Circuits.button;
import static org.sagwise.fixture.Circuits.cell;
import static org.sagwise.fixture.Circuits.coil;
import static org.sagwise.fixture.Circuits.ideal;
import static org.sagwise.fixture.Circuits.jumper;
import static org.sagwise.fixture.Circuits.parallel;
import static org.sagwise.fixture.Circuits.series;
import static org.sagwise.fixture.Circuits.touch;
import static org.sagwise.fixture.Circuits.turned;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.provider.Arguments;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/**
 * One scenario for every hazard and every variant of its texts, by {@code id} or {@code
 * id.variant}: those written here, and what lies beyond the thresholds of {@link ThresholdTest}.
 */
final class Examples {

    private Examples() {}

    static Part good(String id) {
        return cell(id, 4.2, 20);
    }

    static Part part(String id, PartKind kind, Object... keys) {
        return Part.of(id, kind, keys);
    }

    static Scenario single(Part cell) {
        return org.sagwise.fixture.Circuits.single(cell, 1.0);
    }

    static Scenario bare(Part... parts) {
        return Scenario.of("Bare", List.of(parts), List.of());
    }

    /** A ring of one cell through further parts of two terminals, in order. */
    static Scenario ring(Part cell, Part... parts) {
        List<Part> all = new ArrayList<>(List.of(cell));
        List<Link> links = new ArrayList<>();
        String end = cell.id() + ".+";
        for (Part part : parts) {
            all.add(part);
            List<String> ends = part.kind().terminals();
            links.add(ideal(end, part.id() + "." + ends.get(0)));
            end = part.id() + "." + ends.get(1);
        }
        links.add(ideal(end, cell.id() + ".-"));
        return Scenario.of("Ring", all, links);
    }

    static Scenario withBoard(Part cell, double coilOhm, Object... keys) {
        List<Object> all = new ArrayList<>(List.of("power_W", 20));
        all.addAll(List.of(keys));
        return Scenario.of(
                "Board",
                List.of(cell, button(3), Part.of("board", PartKind.BOARD, all.toArray()), coil(coilOhm)),
                List.of(
                        ideal("A.+", "fire.1"),
                        ideal("fire.2", "board.in+"),
                        ideal("board.in-", "A.-"),
                        ideal("board.out+", "coil.1"),
                        ideal("board.out-", "coil.2")));
    }

    static Scenario charging(Part cell, Object... keys) {
        return Scenario.of(
                "Charging",
                List.of(cell, Part.of("charger", PartKind.CHARGER, keys)),
                List.of(ideal("charger.+", "A.+"), ideal("charger.-", "A.-")));
    }

    static Scenario supplied(double volts, double ohm, Part cell) {
        return Scenario.of(
                "Supply",
                List.of(cell, part("S", PartKind.SUPPLY, "volts", volts, "internal_ohm", ohm)),
                List.of(ideal("S.+", "A.+"), ideal("S.-", "A.-")));
    }

    static Map<String, Scenario> all() {
        Map<String, Scenario> all = new LinkedHashMap<>();
        shorts(all);
        cells(all);
        packs(all);
        joints(all);
        others(all);
        thresholds(all);
        return all;
    }

    /** What lies just beyond a threshold shows the hazard too, so that a new one needs no more. */
    private static void thresholds(Map<String, Scenario> all) {
        ThresholdTest.bothSides().map(Arguments::get).forEach(side -> {
            Scenario beyond = (Scenario) side[3];
            Caution caution = Found.one((String) side[0], beyond);
            Object variant = caution.details().get(CautionBuilder.VARIANT);
            all.putIfAbsent(variant == null ? caution.id() : caution.id() + "." + variant, beyond);
        });
    }

    private static void shorts(Map<String, Scenario> all) {
        all.put("reversed-in-parallel", turned(parallel(1.0, good("A"), good("B")), "B"));
        all.put("pack-shorted.metal", single(good("A")).plus(touch("A.+", "A.-", 10)));
        all.put(
                "pack-shorted.supply",
                Scenario.of(
                        "Supply",
                        List.of(Part.of("S", PartKind.SUPPLY, "volts", 5)),
                        List.of(touch("S.+", "S.-", 10))));
        all.put("pack-shorted.load", org.sagwise.fixture.Circuits.single(good("A"), 0.05));
        Scenario torn = single(good("A").with("wrap", "torn"));
        all.put("torn-wrap-touching.current", torn.plus(touch("A.can", "A.+", 50)));
        all.put(
                "torn-wrap-touching.quiet",
                torn.plus(Part.of("tube", PartKind.RESISTOR, "ohm", 0)).plus(touch("A.can", "tube.1", 50)));
        all.put("coil-bypassed.short", single(good("A")).plus(touch("coil.1", "coil.2", 5)));
        all.put(
                "coil-bypassed.idle",
                ring(good("A"), button(3), coil(1.0), part("C2", PartKind.COIL, "ohm", 1))
                        .plus(touch("C2.1", "C2.2", 1)));
        all.put(
                "meter-across-cell",
                single(good("A"))
                        .plus(part("meter", PartKind.METER, "mode", "amps"))
                        .plus(ideal("meter.red", "A.+"))
                        .plus(ideal("meter.black", "A.-")));
        Scenario two = series(2.0, good("A"), good("B"));
        all.put(
                "unequal-rows-in-parallel",
                two.plus(good("C")).plus(ideal("C.+", "B.+")).plus(ideal("C.-", "A.-")));
    }

    private static void cells(Map<String, Scenario> all) {
        all.put("cell-over-limit.one", org.sagwise.fixture.Circuits.single(good("A"), 0.15));
        all.put("cell-over-limit.many", series(0.3, good("A"), good("B")));
        all.put(
                "pulse-as-continuous",
                org.sagwise.fixture.Circuits.single(
                        good("A").with("pulse_A", 25).with("pulse_s", 5), 0.15));
        all.put("cell-near-limit", org.sagwise.fixture.Circuits.single(good("A"), 0.22));
        all.put("limit-unknown", single(good("A").without("limit_A")));
        all.put("cell-cold", single(good("A").with("temperature_C", -10)));
        all.put("cell-hot", single(good("A").with("temperature_C", 78)));
        all.put("cell-above-full", single(cell("A", 4.35, 20)));
        all.put("cell-charged-above-full", supplied(4.6, 0.3, cell("A", 4.2, 80)));
        all.put("cell-empty", single(cell("A", 3.0, 20)));
        all.put("cell-deep-discharged", single(cell("A", 1.5, 20)));
        all.put("cell-below-cutoff", single(cell("A", 3.3, 50)));
        all.put("cell-driven-backwards", series(4.0, good("A"), cell("B", 0.0, 60)));
        Part guarded = good("A").with("guard", Keys.of("trip_A", 8, "trip_s", 0.1, "mohm", 40));
        all.put("guard-trip", org.sagwise.fixture.Circuits.single(guarded, 0.25));
        all.put("label-claims.current", single(good("A").with("claimed_A", 35)));
        all.put("label-claims.impossible", single(good("A").with("claimed_mAh", 9900)));
        all.put("label-claims.capacity", single(good("A").with("claimed_mAh", 3400)));
        all.put("torn-wrap", single(good("A").with("wrap", "torn")));
        all.put("joint-on-sound-wrap", single(good("A")).plus(touch("A.can", "A.+", 50)));
    }

    private static void packs(Map<String, Scenario> all) {
        all.put("unequal-charge-in-parallel", parallel(1.0, good("A"), cell("B", 3.9, 20)));
        all.put("unequal-charge-in-series", series(4.0, good("A"), cell("B", 3.9, 20)));
        all.put("reversed-in-series.cancel", turned(series(4.0, good("A"), good("B")), "B"));
        all.put("reversed-in-series.uneven", turned(series(0.5, good("A"), cell("B", 3.0, 20)), "B"));
        all.put("reversed-in-series.outvoted", turned(series(4.0, good("A"), good("B"), good("C")), "B"));
        all.put("mixed-chemistry", series(4.0, good("A"), cell("B", 4.15, 20).with("chemistry", "IMR")));
        all.put("mixed-capacity", parallel(1.0, good("A"), good("B").with("capacity_mAh", 3000)));
        all.put("mixed-limit", parallel(1.0, good("A"), good("B").with("limit_A", 15)));
        all.put("mixed-health", parallel(1.0, good("A"), good("B").with("health", 0.7)));
        all.put("married-apart.apart", single(good("A").with("married", "P1").with("married_cells", 2)));
        all.put(
                "married-apart.mixed",
                parallel(1.0, good("A").with("married", "P1"), good("B").with("mark", "7")));
        all.put("mixed-resistance", parallel(1.0, good("A"), cell("B", 4.2, 60)));
    }

    private static void joints(Map<String, Scenario> all) {
        Scenario open = single(good("A"));
        List<Link> links = open.links();
        all.put("open-circuit.joint", open.withLinks(links.subList(0, 2)));
        all.put("open-circuit.apart", open.withLinks(links.subList(1, 2)));
        Scenario stuck = open.withPart("fire", fire -> fire.with("stuck", "open"));
        Part melted = part("F1", PartKind.FUSE, "rating_A", 10, "blown", true);
        all.put("open-circuit.gap", open.withLinks(links.subList(0, 2)).plus(touch("A.+", "A.-", 50_000)));
        all.put("open-circuit.switch", stuck);
        all.put("open-circuit.fuse", ring(good("A"), melted, button(3), coil(1.0)));
        Part guard = part("G1", PartKind.REVERSE_GUARD, "rating_A", 3);
        all.put("reverse-guard-over-rating", ring(good("A"), guard, button(3), coil(1.0)));
        all.put("open-circuit.reverse-guard", turned(ring(good("A"), guard, coil(1.0)), "A"));
        all.put("reverse-guard-blocks", guardedPair());
        all.put("open-circuit.meter", ring(good("A"), part("M1", PartKind.METER), button(3), coil(1.0)));
        all.put(
                "open-circuit.blocked",
                ring(good("A"), melted, stuck.part("fire").orElseThrow(), coil(1.0)));
        Scenario thin = Scenario.of(
                "Thin",
                List.of(good("A"), button(3), coil(0.5)),
                List.of(jumper("A.+", "fire.1", 24, 60), ideal("fire.2", "coil.1"), ideal("coil.2", "A.-")));
        all.put(
                "joint-hot.hot",
                single(good("A")).withLinks(List.of(touch("A.+", "fire.1", 200), links.get(1), links.get(2))));
        all.put(
                "joint-hot.loose",
                single(good("A")).withLinks(List.of(touch("A.+", "fire.1", 60), links.get(1), links.get(2))));
        all.put("board-asks-too-much", withBoard(cell("A", 4.2, 90).with("limit_A", 5), 0.3, "power_W", 60));
        all.put("jumper-over-ampacity", thin);
        all.put(
                "jumper-over-fusing",
                thin.withLinks(List.of(
                        jumper("A.+", "fire.1", 32, 10),
                        thin.links().get(1),
                        thin.links().get(2))));
        all.put("fuse-too-large.cells", ring(good("A"), part("F1", PartKind.FUSE, "rating_A", 30), coil(1.0)));
        Scenario fused = ring(good("A"), part("F1", PartKind.FUSE, "rating_A", 15), coil(1.0));
        all.put(
                "fuse-too-large.wire",
                fused.withLinks(List.of(
                        jumper("A.+", "F1.1", 22, 60),
                        fused.links().get(1),
                        fused.links().get(2))));
        all.put(
                "fuse-too-large.ptc-cells",
                ring(good("A"), part("F1", PartKind.PTC, "hold_A", 14, "trip_A", 28), coil(1.0)));
        Scenario resettable = ring(good("A"), part("F1", PartKind.PTC, "hold_A", 5, "trip_A", 10), coil(1.0));
        all.put(
                "fuse-too-large.ptc-wire",
                resettable.withLinks(List.of(
                        jumper("A.+", "F1.1", 24, 50),
                        resettable.links().get(1),
                        resettable.links().get(2))));
        all.put("fuse-will-open", ring(good("A"), part("F1", PartKind.FUSE, "rating_A", 3), coil(1.0)));
    }

    /** Two cells in a row, one full and one nearly flat, on a charger for the row. */
    static Scenario unequalRowOnCharger() {
        return Scenario.of(
                "Charger",
                List.of(
                        cell("A", 4.2, 20),
                        cell("B", 3.48, 20),
                        part("charger", PartKind.CHARGER, "current_A", 1, "limit_V", 8.4)),
                List.of(ideal("A.+", "B.-"), ideal("charger.+", "B.+"), ideal("charger.-", "A.-")));
    }

    /** Two cells side by side, a reverse guard behind each, the second cell turned round. */
    private static Scenario guardedPair() {
        return Scenario.of(
                "Guarded",
                List.of(
                        good("A"),
                        good("B"),
                        part("G1", PartKind.REVERSE_GUARD, "rating_A", 30),
                        part("G2", PartKind.REVERSE_GUARD, "rating_A", 30),
                        button(3),
                        coil(1.0)),
                List.of(
                        ideal("A.+", "G1.in"),
                        ideal("B.-", "G2.in"),
                        ideal("G1.out", "G2.out"),
                        ideal("G1.out", "fire.1"),
                        ideal("fire.2", "coil.1"),
                        ideal("coil.2", "A.-"),
                        ideal("A.-", "B.+")));
    }

    private static void others(Map<String, Scenario> all) {
        all.put("coil-over-limit", single(good("A")).withPart("coil", coil -> coil.with("limit_W", 10)));
        all.put("charge-over-limit", charging(cell("A", 3.6, 20), "current_A", 3));
        all.put("unequal-charge-in-series.filled", unequalRowOnCharger());
        all.put("charger-too-high", charging(cell("A", 3.6, 20), "current_A", 1, "limit_V", 4.4));
        all.put(
                "charger-reversed",
                Scenario.of(
                        "Charger",
                        List.of(cell("A", 3.6, 20), part("charger", PartKind.CHARGER, "current_A", 1)),
                        List.of(ideal("charger.+", "A.-"), ideal("charger.-", "A.+"))));
        all.put("supply-charges-cell", supplied(4.2, 0.15, cell("A", 4.0, 50)));
        all.put("charging-temperature.cold", charging(cell("A", 3.6, 20).with("temperature_C", -5), "current_A", 1));
        all.put("charging-temperature.hot", charging(cell("A", 3.6, 20).with("temperature_C", 50), "current_A", 1));
        all.put("switch-stuck.current", single(good("A")).withPart("fire", fire -> fire.with("stuck", "closed")));
        all.put("switch-stuck.quiet", bare(part("fire", PartKind.SWITCH, "stuck", "closed")));
        all.put("board-trouble.cutoff", withBoard(cell("A", 3.4, 60), 0.5, "cutoff_V", 3.2));
        all.put("board-trouble.input-limit", withBoard(good("A"), 0.5, "max_input_A", 3));
        all.put("board-trouble.no-power", withBoard(cell("A", 3.4, 200), 0.5));
        all.put("board-trouble.output-shorted", withBoard(good("A"), 0.5).plus(ideal("board.out+", "board.out-")));
        all.put("board-trouble.at-max", withBoard(good("A"), 8.0, "out_max_V", 6));
        all.put("board-trouble.at-min", withBoard(good("A"), 0.2, "out_min_V", 3));
        Part ideal = cell("A", 4.2, 0);
        all.put(
                "sources-disagree",
                Scenario.of(
                        "Ideal", List.of(ideal, cell("B", 4.0, 0)), List.of(ideal("A.+", "B.+"), ideal("A.-", "B.-"))));
        all.put(
                "meter-on-live-circuit",
                single(good("A"))
                        .plus(part("M1", PartKind.METER, "mode", "ohms"))
                        .plus(ideal("M1.red", "A.+"))
                        .plus(ideal("M1.black", "A.-")));
    }
}
