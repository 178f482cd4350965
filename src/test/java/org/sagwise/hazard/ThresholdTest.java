package org.sagwise.hazard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.params.provider.Arguments.arguments;
import static org.sagwise.fixture.Circuits.button;
import static org.sagwise.fixture.Circuits.cell;
import static org.sagwise.fixture.Circuits.coil;
import static org.sagwise.fixture.Circuits.ideal;
import static org.sagwise.fixture.Circuits.jumper;
import static org.sagwise.fixture.Circuits.parallel;
import static org.sagwise.fixture.Circuits.series;
import static org.sagwise.fixture.Circuits.single;
import static org.sagwise.fixture.Circuits.touch;
import static org.sagwise.fixture.Circuits.turned;
import static org.sagwise.hazard.Examples.charging;
import static org.sagwise.hazard.Examples.good;
import static org.sagwise.hazard.Examples.part;
import static org.sagwise.hazard.Examples.ring;
import static org.sagwise.hazard.Examples.supplied;
import static org.sagwise.hazard.Examples.withBoard;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.part.Gauge;
import org.sagwise.part.PartKind;
import org.sagwise.part.WireLimits;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/** Every hazard just on this side and just on that side of where it begins. */
class ThresholdTest {

    /** A hair's breadth. */
    private static final double HAIR = 1e-4;

    private static final double LESS = 1 - HAIR;
    private static final double MORE = 1 + HAIR;

    /** An ideal full cell, so that amps are 4.2 V over the coil's ohms. */
    private static Part plain() {
        return cell("A", 4.2, 0);
    }

    /** A plain cell on a coil that draws a current. */
    private static Scenario drawing(Part cell, double amps) {
        return single(cell, 4.2 / amps);
    }

    static Stream<Arguments> bothSides() {
        return Stream.of(currents(), shorts(), charges(), voltages(), temperatures(), packs(), wires(), devices())
                .flatMap(side -> side);
    }

    private static Stream<Arguments> currents() {
        Part pulse = plain().with("pulse_A", 25).with("pulse_s", 5);
        Part guarded = plain().with("guard", Keys.of("trip_A", 8, "trip_s", 1, "mohm", 0));
        return Stream.of(
                arguments("cell-over-limit", Signal.WARNING, drawing(plain(), 20 * LESS), drawing(plain(), 20 * MORE)),
                arguments("cell-over-limit", Signal.DANGER, drawing(plain(), 30 * LESS), drawing(plain(), 30 * MORE)),
                arguments("cell-near-limit", Signal.CAUTION, drawing(plain(), 16 * LESS), drawing(plain(), 16 * MORE)),
                arguments("cell-near-limit", Signal.CAUTION, drawing(plain(), 20 * MORE), drawing(plain(), 20 * LESS)),
                arguments("pulse-as-continuous", Signal.WARNING, drawing(pulse, 20 * LESS), drawing(pulse, 20 * MORE)),
                arguments("pulse-as-continuous", Signal.WARNING, drawing(pulse, 25 * MORE), drawing(pulse, 25 * LESS)),
                arguments("cell-over-limit", Signal.WARNING, drawing(pulse, 25 * LESS), drawing(pulse, 25 * MORE)),
                arguments("guard-trip", Signal.NOTICE, drawing(guarded, 8 * LESS), drawing(guarded, 8 * MORE)));
    }

    private static Stream<Arguments> shorts() {
        Scenario four =
                parallel(0.099, good("A"), good("B"), good("C"), good("D")).pressed();
        double least = LoadShorts.LEAST_SENSIBLE_OHM;
        Scenario leak = single(good("A"), 1.0);
        Scenario reversed = turned(parallel(1.0, good("A"), good("B")), "B");
        return Stream.of(
                arguments(
                        "pack-shorted",
                        Signal.DANGER,
                        single(good("A"), least * MORE),
                        single(good("A"), least * LESS)),
                // four cells give 40 A together, each within its limit
                arguments("pack-shorted", Signal.DANGER, four, four.withPart("A", cell -> cell.with("limit_A", 9))),
                arguments(
                        "pack-shorted",
                        Signal.WARNING,
                        leak.plus(touch("A.+", "A.-", 4.2 / 0.1 * 1000)),
                        leak.plus(touch("A.+", "A.-", 4.2 / 0.1 * 1000 - 25))),
                // over the limit of 20 A: 4.2 V / 20 A = 210 mΩ with the cell's own 20 mΩ
                arguments(
                        "pack-shorted",
                        Signal.DANGER,
                        leak.plus(touch("A.+", "A.-", 190.1)),
                        leak.plus(touch("A.+", "A.-", 189.9))),
                arguments("reversed-in-parallel", Signal.DANGER, parallel(1.0, good("A"), good("B")), reversed));
    }

    private static Stream<Arguments> charges() {
        Part low = cell("A", 3.6, 0);
        Scenario pair = parallel(1.0, cell("A", 4.2, 20), cell("B", 4.1501, 20));
        return Stream.of(
                // 1.25 A is half of 2.5 Ah in an hour
                arguments(
                        "charge-over-limit",
                        Signal.WARNING,
                        charging(low, "current_A", 1.25),
                        charging(low, "current_A", 1.26)),
                arguments(
                        "charge-over-limit",
                        Signal.DANGER,
                        charging(low, "current_A", 20),
                        charging(low, "current_A", 20.1)),
                arguments(
                        "charger-too-high",
                        Signal.WARNING,
                        charging(low, "current_A", 1, "limit_V", 4.25 * LESS),
                        charging(low, "current_A", 1, "limit_V", 4.25 * MORE)),
                arguments(
                        "supply-charges-cell",
                        Signal.WARNING,
                        supplied(4.0 + 0.049, 1, cell("A", 4.0, 0)),
                        supplied(4.0 + 0.051, 1, cell("A", 4.0, 0))),
                // (4.2 V - 4.15 V) / 40 mΩ = 1.25 A
                arguments(
                        "unequal-charge-in-parallel",
                        Signal.WARNING,
                        pair,
                        pair.withPart("B", cell -> cell.with("rest_V", 4.1499))),
                // 0.8 V / 40 mΩ = 20 A
                arguments(
                        "unequal-charge-in-parallel",
                        Signal.DANGER,
                        pair.withPart("B", cell -> cell.with("rest_V", 3.401)),
                        pair.withPart("B", cell -> cell.with("rest_V", 3.399))),
                arguments("reversed-in-series", Signal.WARNING, opposed(4.2 - 1.249), opposed(4.2 - 1.251)));
    }

    /** A full ideal cell against a turned one on 1 Ω: the current is the difference of volts. */
    private static Scenario opposed(double restV) {
        return turned(series(1.0, plain(), cell("B", restV, 0)), "B");
    }

    private static Stream<Arguments> voltages() {
        return Stream.of(
                arguments("cell-empty", Signal.NOTICE, resting(3.201), resting(3.199)),
                arguments("cell-empty", Signal.NOTICE, resting(1.999), resting(2.001)),
                arguments("cell-deep-discharged", Signal.WARNING, resting(2.001), resting(1.999)),
                arguments("cell-above-full", Signal.WARNING, resting(4.249), resting(4.251)),
                arguments(
                        "cell-charged-above-full",
                        Signal.WARNING,
                        supplied(4.249, 0, cell("A", 4.2, 50)),
                        supplied(4.251, 0, cell("A", 4.2, 50))),
                // 3.4 V on 0.8 Ω and 50 mΩ: exactly 3.2 V; a little more load, a little less volts
                arguments(
                        "cell-below-cutoff",
                        Signal.NOTICE,
                        single(cell("A", 3.4, 50), 0.8 * MORE),
                        single(cell("A", 3.4, 50), 0.8 * LESS)),
                // 4.2 V / (1 Ω + 60 mΩ) = 3.96 A; 3.96 A on 60 mΩ takes 0.238 V
                arguments(
                        "cell-driven-backwards",
                        Signal.WARNING,
                        series(1.0, plain(), cell("B", 0.26, 60)),
                        series(1.0, plain(), cell("B", 0.24, 60))));
    }

    private static Scenario resting(double restV) {
        return single(cell("A", restV, 0), 10);
    }

    private static Stream<Arguments> temperatures() {
        return Stream.of(
                arguments("cell-cold", Signal.NOTICE, at(0), at(-0.1)),
                arguments("cell-hot", Signal.WARNING, at(75), at(75.1)),
                arguments("cell-hot", Signal.DANGER, at(109.9), at(110)),
                arguments("charging-temperature", Signal.WARNING, chargedAt(0), chargedAt(-0.1)),
                arguments("charging-temperature", Signal.CAUTION, chargedAt(45), chargedAt(45.1)));
    }

    private static Scenario at(double temperatureC) {
        return single(good("A").with("temperature_C", temperatureC), 1.0);
    }

    private static Scenario chargedAt(double temperatureC) {
        return charging(cell("A", 3.6, 20).with("temperature_C", temperatureC), "current_A", 1);
    }

    private static Stream<Arguments> packs() {
        return Stream.of(
                arguments("mixed-chemistry", Signal.WARNING, pair("chemistry", "INR"), pair("chemistry", "NCR")),
                arguments("mixed-capacity", Signal.CAUTION, pair("capacity_mAh", 2624), pair("capacity_mAh", 2626)),
                arguments("mixed-limit", Signal.CAUTION, pair("limit_A", 21), pair("limit_A", 21.1)),
                arguments("mixed-health", Signal.CAUTION, pair("health", 0.9), pair("health", 0.89)),
                arguments(
                        "married-apart",
                        Signal.CAUTION,
                        pairOf(married("A", 2), married("B", 2)),
                        pairOf(married("A", 2), good("B").with("mark", "7"))),
                arguments("married-apart", Signal.CAUTION, single(good("A"), 1), single(married("A", 2), 1)),
                arguments(
                        "married-apart",
                        Signal.CAUTION,
                        pairOf(married("A", 2), good("B")),
                        pairOf(married("A", 3), good("B"))),
                arguments("mixed-resistance", Signal.CAUTION, pair("internal_mohm", 30), pair("internal_mohm", 30.1)),
                arguments(
                        "unequal-charge-in-series",
                        Signal.CAUTION,
                        series(4, good("A"), cell("B", 4.101, 20)),
                        series(4, good("A"), cell("B", 4.099, 20))));
    }

    private static Scenario pair(String key, Object value) {
        return parallel(1.0, good("A"), good("B").with(key, value));
    }

    private static Scenario pairOf(Part one, Part other) {
        return parallel(1.0, one, other);
    }

    /** A cell of a married set of some cells. */
    private static Part married(String id, int cells) {
        return good(id).with("married", "P1").with("married_cells", cells);
    }

    private static Stream<Arguments> wires() {
        double steadyA = WireLimits.steadyCurrentA(new Gauge(22).size());
        double meltingA = WireLimits.meltingCurrentA(new Gauge(30).size());
        return Stream.of(
                arguments("jumper-over-ampacity", Signal.CAUTION, wired(22, steadyA * LESS), wired(22, steadyA * MORE)),
                arguments(
                        "jumper-over-ampacity", Signal.CAUTION, wired(30, meltingA * MORE), wired(30, meltingA * LESS)),
                arguments("jumper-over-fusing", Signal.WARNING, wired(30, meltingA * LESS), wired(30, meltingA * MORE)),
                arguments("fuse-too-large", Signal.CAUTION, fused(20, 10), fused(20.1, 10)),
                // 25 A is the guide for 14 AWG, beyond the cell's 20 A; 18 A that for 16 AWG
                arguments("fuse-too-large", Signal.CAUTION, fused(18, 16), fused(18.1, 16)),
                // 4.2 A through a fuse of 3.5 A is exactly 1.2 times its rating
                // 4.2 A, and a guard that costs nothing
                arguments("reverse-guard-over-rating", Signal.CAUTION, guarded(4.21), guarded(4.19)),
                arguments("reverse-guard-blocks", Signal.NOTICE, heldBack(1.99), heldBack(2.01)),
                arguments("fuse-will-open", Signal.NOTICE, fused(3.501, 10), fused(3.499, 10)),
                arguments("fuse-too-large", Signal.CAUTION, resettable(10, 20), resettable(10, 20.1)),
                // in air of 23 °C the geometric mean of both currents is 4.2 A, which flow
                arguments("ptc-will-trip", Signal.NOTICE, resettable(4.2, 4.2 * MORE), resettable(4.2, 4.2 * LESS)),
                arguments("ptc-over-voltage", Signal.WARNING, bearing(4.2), bearing(4.19)));
    }

    /** A ring through a jumper of almost no length, so that its ohms change nothing. */
    private static Scenario wired(int awg, double amps) {
        return Scenario.of(
                "Wired",
                List.of(plain(), button(0), coil(4.2 / amps)),
                List.of(jumper("A.+", "fire.1", awg, 1e-6), ideal("fire.2", "coil.1"), ideal("coil.2", "A.-")));
    }

    private static Scenario guarded(double ratingA) {
        return ring(plain(), part("G1", PartKind.REVERSE_GUARD, "rating_A", ratingA, "mohm", 0), button(0), coil(1));
    }

    /** A guard behind a cell of so many volts less than the one beside it. */
    private static Scenario heldBack(double volts) {
        Part guard = part("G1", PartKind.REVERSE_GUARD, "rating_A", 30);
        Scenario ring = ring(plain(), button(0), coil(1));
        return ring.withParts(List.of(
                        ring.parts().get(0),
                        ring.parts().get(1),
                        ring.parts().get(2),
                        guard,
                        cell("B", 4.2 - volts, 0)))
                .plus(ideal("B.+", "G1.in"))
                .plus(ideal("G1.out", "A.+"))
                .plus(ideal("B.-", "A.-"));
    }

    private static Scenario fused(double ratingA, int awg) {
        Scenario ring = ring(plain(), part("F1", PartKind.FUSE, "rating_A", ratingA, "mohm", 0), coil(1));
        return ring.withLinks(List.of(
                jumper("A.+", "F1.1", awg, 1e-6),
                ring.links().get(1),
                ring.links().get(2)));
    }

    /** 4.2 A through a resettable fuse of hardly any ohms. */
    private static Scenario resettable(double holdA, double tripA) {
        Part fuse = part("F1", PartKind.PTC, "hold_A", holdA, "trip_A", tripA, "mohm", 0.001);
        return ring(plain(), fuse, coil(1)).withAmbientC(23);
    }

    private static Scenario bearing(double mostV) {
        return ring(plain(), part("F1", PartKind.PTC, "hold_A", 10, "mohm", 10, "max_V", mostV), coil(1));
    }

    private static Stream<Arguments> devices() {
        Part coil = coil(1).with("limit_W", 17.64);
        return Stream.of(
                arguments(
                        "coil-over-limit",
                        Signal.CAUTION,
                        ring(plain(), button(0), coil.with("limit_W", 17.65)),
                        ring(plain(), button(0), coil.with("limit_W", 17.63))),
                arguments(
                        "coil-over-limit",
                        Signal.WARNING,
                        ring(plain(), button(0), coil.with("limit_W", 8.83)),
                        ring(plain(), button(0), coil.with("limit_W", 8.81))),
                arguments("label-claims", Signal.WARNING, claim("claimed_A", 20), claim("claimed_A", 21)),
                arguments("label-claims", Signal.WARNING, claim("claimed_mAh", 2749), claim("claimed_mAh", 2751)),
                arguments("meter-on-live-circuit", Signal.NOTICE, ohmmeterAt(0.049), ohmmeterAt(0.051)),
                // 20 W / (0.92 · 4.2 V) = 5.18 A
                arguments(
                        "board-trouble",
                        Signal.NOTICE,
                        withBoard(plain(), 0.5, "max_input_A", 5.2),
                        withBoard(plain(), 0.5, "max_input_A", 5.1)),
                arguments(
                        "board-trouble",
                        Signal.NOTICE,
                        withBoard(plain(), 0.5, "cutoff_V", 4.1),
                        withBoard(plain(), 0.5, "cutoff_V", 4.3)),
                // 20 W into 0.5 Ω take 3.16 V
                arguments(
                        "board-trouble",
                        Signal.NOTICE,
                        withBoard(plain(), 0.5, "out_max_V", 3.2),
                        withBoard(plain(), 0.5, "out_max_V", 3.1)),
                arguments(
                        "board-trouble",
                        Signal.CAUTION,
                        withBoard(plain(), 0.5, "out_min_V", 3.1),
                        withBoard(plain(), 0.5, "out_min_V", 3.2)));
    }

    private static Scenario claim(String key, double value) {
        return single(good("A").with(key, value), 1.0);
    }

    private static Scenario ohmmeterAt(double volts) {
        return Scenario.of(
                "Meter",
                List.of(part("S", PartKind.SUPPLY, "volts", volts), part("M1", PartKind.METER, "mode", "ohms")),
                List.of(ideal("S.+", "M1.red"), ideal("S.-", "M1.black")));
    }

    @ParameterizedTest
    @MethodSource("bothSides")
    void check_onBothSidesOfAThreshold_findsOnOneOnly(String id, Signal signal, Scenario without, Scenario with) {
        assertEquals(List.of(), signals(id, signal, without), "where it should not show");
        assertEquals(List.of(signal), signals(id, signal, with), "where it should show");
    }

    private static List<Signal> signals(String id, Signal signal, Scenario scenario) {
        return Found.in(scenario).stream()
                .filter(caution -> caution.id().equals(id))
                .map(Caution::signal)
                .filter(signal::equals)
                .toList();
    }
}
