package org.sagwise.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ScenarioReader;
import org.sagwise.part.Catalogue;
import org.sagwise.part.PartKind;
import org.sagwise.plan.SameWatts.Answer;
import org.sagwise.reading.Bench;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/** The coil that takes given watts. */
class SameWattsTest {

    private static final Catalogue CATALOGUE = CatalogueLoader.builtIn();

    private static Scenario demo(String name) {
        return new ScenarioReader(CATALOGUE)
                .read(DemoScenarios.bytes(name))
                .scenario()
                .orElseThrow();
    }

    private static Scenario one(double restV, double mohm) {
        Part cell = Part.of(
                "A", PartKind.CELL, "rest_V", restV, "internal_mohm", mohm, "capacity_mAh", 3000, "limit_A", 15);
        Part coil = Part.of("coil", PartKind.COIL, "ohm", 1);
        return Scenario.of(
                "one",
                List.of(cell, coil),
                List.of(
                        Link.ideal(cell.terminal("+"), coil.terminal("1")),
                        Link.ideal(coil.terminal("2"), cell.terminal("-"))));
    }

    private static double watts(Scenario scenario) {
        return Bench.of(scenario, CATALOGUE).fired().coils().get(0).powerW();
    }

    /** Ideal cells: 4.2² / 1 = 8.4² / 4 = 17.64 W, by Ohm's law. */
    @Test
    void coilFor_idealPairsOfEqualWatts_isFourTimesTheOhmsInARow() {
        double parallel = watts(demo("two-side-by-side-ideal"));
        assertEquals(17.64, parallel, 1e-9);
        Answer answer = SameWatts.coilFor(demo("two-in-a-row-ideal"), CATALOGUE, parallel);
        assertEquals(4, assertInstanceOf(Answer.Found.class, answer).ohm(), 1e-9);
    }

    /** P·R² + (2·P·r − U²)·R + P·r² = 0, the larger root: from P = U²·R/(R + r)². */
    @Property(tries = 50)
    void coilFor_oneCell_isTheLargerRootOfTheQuadratic(
            @ForAll @DoubleRange(min = 2.5, max = 4.2) double volts,
            @ForAll @DoubleRange(min = 1, max = 200) double mohm,
            @ForAll @DoubleRange(min = 0.01, max = 0.99) double share) {
        double r = mohm / 1000;
        double power = share * volts * volts / (4 * r);
        double b = volts * volts - 2 * power * r;
        double expected = (b + Math.sqrt(b * b - 4 * power * power * r * r)) / (2 * power);
        Answer answer = SameWatts.coilFor(one(volts, mohm), CATALOGUE, power);
        Answer.Found found = assertInstanceOf(Answer.Found.class, answer);
        assertEquals(1, found.ohm() / expected, 1e-6);
        assertEquals(1, watts(found.scenario()) / power, 1e-9);
    }

    /** Maximum power transfer: U² / (4·r) into a load of r. */
    @Test
    void coilFor_moreThanThePackCanGive_saysTheMost() {
        Answer answer = SameWatts.coilFor(one(4.2, 20), CATALOGUE, 221);
        Answer.TooMuch most = assertInstanceOf(Answer.TooMuch.class, answer);
        assertEquals(4.2 * 4.2 / 0.08, most.mostW(), 1e-6);
        assertEquals(0.020, most.atOhm(), 1e-9);
    }

    @Test
    void coilFor_questionsWithoutAnAnswer_sayWhy() {
        assertEquals(
                new Answer.NoSingleCoil(SameWatts.Why.REGULATED),
                SameWatts.coilFor(demo("regulated-board"), CATALOGUE, 10));
        assertEquals(
                new Answer.NoSingleCoil(SameWatts.Why.NO_COIL), SameWatts.coilFor(Scenario.empty(), CATALOGUE, 10));
        assertEquals(
                new Answer.NoSingleCoil(SameWatts.Why.NO_POWER),
                SameWatts.coilFor(one(4.2, 20).withLinks(List.of()), CATALOGUE, 10));
    }
}
