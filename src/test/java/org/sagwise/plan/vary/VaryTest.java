package org.sagwise.plan.vary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.part.Catalogue;
import org.sagwise.part.PartKind;
import org.sagwise.reading.Bench;
import org.sagwise.reading.NamedReading;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/** Readings over values, and builds of parts that are not as printed. */
class VaryTest {

    private static final Catalogue CATALOGUE = CatalogueLoader.builtIn();
    private static final double Z_95 = 1.959964;

    /** A cell of 4.2 V and 50 mΩ, limit 10 A, through a contact of 50 mΩ to a coil of 0.5 Ω. */
    private static final Scenario ONE_CELL = Scenario.of(
            "",
            List.of(
                    Part.of(
                            "A",
                            PartKind.CELL,
                            "charge",
                            1.0,
                            "internal_mohm",
                            50.0,
                            "capacity_mAh",
                            2500.0,
                            "limit_A",
                            10.0),
                    Part.of("coil", PartKind.COIL, "ohm", 0.5)),
            List.of(Link.touch(end("A.+"), end("coil.1"), 50), Link.ideal(end("coil.2"), end("A.-"))));

    private static TerminalRef end(String name) {
        int dot = name.indexOf('.');
        return new TerminalRef(name.substring(0, dot), name.substring(dot + 1));
    }

    private static NamedReading reading(String name) {
        return NamedReading.of(name).orElseThrow();
    }

    private static Variable variable(Scenario scenario, String name) {
        return Variable.of(scenario, name).orElseThrow();
    }

    @Test
    void over_theCoilsOhms_isOhmsLaw() {
        VariedCurve curve = new Vary(ONE_CELL, CATALOGUE, reading("coil.power_W"))
                .over(variable(ONE_CELL, "coil.ohm"), new Range(0.2, 1.0), 9, Progress.NONE);

        for (VariedCurve.Point point : curve.points()) {
            double amps = 4.2 / (point.at() + 0.1);
            assertEquals(amps * amps * point.at(), point.reading(), 1e-6);
        }
        assertEquals(0.5, curve.now().orElseThrow());
    }

    /** I = 4.2 V / (R + 0.1 Ω) is 10 A at 0.32 Ω. */
    @Test
    void cautions_alongTheCurve_beginAndEndWhereTheNumberPassesItsLimit() {
        VariedCurve curve = new Vary(ONE_CELL, CATALOGUE, reading("A.current_A"))
                .over(variable(ONE_CELL, "coil.ohm"), new Range(0.2, 1.0), 9, Progress.NONE);

        CautionSpan over = curve.cautions().stream()
                .filter(span -> span.caution().id().equals("cell-over-limit"))
                .findFirst()
                .orElseThrow();
        assertEquals(0.2, over.from());
        assertFalse(over.beginsWithin());
        assertTrue(over.endsWithin());
        assertEquals(0.32, over.to(), 1e-3);
        assertEquals(10, curve.limit().orElseThrow());
    }

    @Test
    void over_aValueThatTheFormatForbids_saysWhyAndGoesOn() {
        Scenario row = ONE_CELL.withPart("A", part -> part.with("cutoff_V", 3.0));
        VariedCurve curve = new Vary(row, CATALOGUE, reading("coil.power_W"))
                .over(variable(row, "A.full_V"), new Range(2.5, 4.2), 3, Progress.NONE);

        assertFalse(curve.points().get(0).refused().isEmpty());
        assertTrue(Double.isNaN(curve.points().get(0).reading()));
        assertTrue(curve.points().get(2).reading() > 0);
    }

    @Test
    void over_twoValues_isTheOneWithTheOther() {
        Variable ohm = variable(ONE_CELL, "coil.ohm");
        Variable contact = variable(ONE_CELL, "#1.contact_mohm");
        VariedField field = new Vary(ONE_CELL, CATALOGUE, reading("A.current_A"))
                .over(ohm, new Range(0.2, 1), contact, new Range(0, 100), 3, Progress.NONE);

        assertEquals(4.2 / (0.6 + 0.05 + 0.1), field.values()[2][1], 1e-6);
        assertEquals(4.2 / (0.2 + 0.05), field.values()[0][0], 1e-6);
    }

    @Test
    void over_calledOff_endsWithWhatItHas() {
        VariedCurve curve = new Vary(ONE_CELL, CATALOGUE, reading("A.current_A"))
                .over(variable(ONE_CELL, "ambient"), new Range(0, 30), 9, share -> share < 0.3);

        assertEquals(3, curve.points().size());
    }

    @Test
    void variable_byItsName_readsAndSetsWhatTheFileSays() {
        Bench bench = Bench.of(ONE_CELL, CATALOGUE);
        for (String name : List.of("A.charge", "A.internal_mohm", "coil.ohm", "#1.contact_mohm", "ambient_C")) {
            Variable variable = variable(ONE_CELL, name);
            double other = variable.present(bench).orElseThrow() * 0.75;
            Scenario changed = variable.with(ONE_CELL, other);

            assertEquals(other, variable.present(Bench.of(changed, CATALOGUE)).orElseThrow(), 1e-12, name);
            assertTrue(variable.usualRange(bench).holds(variable.present(bench).getAsDouble()), name);
        }
        assertEquals("A.internal_mohm", variable(ONE_CELL, "A.internal").toString());
        assertTrue(Variable.of(ONE_CELL, "A.cap").isEmpty());
        assertEquals(0.05, variable(ONE_CELL, "A.internal").si(50), 1e-12);
    }

    /** Two resistors on a supply: amounts are those of {@link Tolerances}, 5 % each and 1 % of the volts. */
    private static Scenario pair(boolean inSeries) {
        List<Part> parts = List.of(
                Part.of("S", PartKind.SUPPLY, "volts", 10.0, "internal_ohm", 0.0),
                Part.of("P", PartKind.RESISTOR, "ohm", 10.0),
                Part.of("Q", PartKind.RESISTOR, "ohm", 30.0));
        return Scenario.of(
                "",
                parts,
                inSeries
                        ? List.of(
                                Link.ideal(end("S.+"), end("P.1")),
                                Link.ideal(end("P.2"), end("Q.1")),
                                Link.ideal(end("Q.2"), end("S.-")))
                        : List.of(
                                Link.ideal(end("S.+"), end("P.1")),
                                Link.ideal(end("S.+"), end("Q.1")),
                                Link.ideal(end("P.2"), end("S.-")),
                                Link.ideal(end("Q.2"), end("S.-"))));
    }

    /** First-order propagation: JCGM 100:2008 (GUM), 5.1.2, for I = U/(P+Q) and for P = U²(1/P + 1/Q). */
    @Test
    void spread_ofASeriesAndAParallelPair_isThatOfFirstOrder() {
        double supply = 0.01 / Z_95;
        double resistor = 0.05 / Z_95;
        double series = Math.sqrt(supply * supply + resistor * resistor * (0.25 * 0.25 + 0.75 * 0.75));
        double parallel = Math.sqrt(4 * supply * supply + resistor * resistor * (0.75 * 0.75 + 0.25 * 0.25));

        BuildSpread row = spread(pair(true), "P.current_A");
        assertEquals(series, row.deviation() / row.mean(), 0.02 * series);
        assertEquals(0.75 * 0.75 * resistor * resistor / (series * series), share(row, "Q.ohm"), 0.02);
        assertEquals(row.mean() * (1 - 1.645 * series), row.range().low(), 0.002 * row.mean());

        BuildSpread beside = spread(pair(false), "pack.given_W");
        assertEquals(parallel, beside.deviation() / beside.mean(), 0.02 * parallel);
        assertEquals(0.75 * 0.75 * resistor * resistor / (parallel * parallel), share(beside, "P.ohm"), 0.02);
    }

    private static double share(BuildSpread spread, String name) {
        return spread.ranking().stream()
                .filter(rank -> rank.variable().toString().equals(name))
                .findFirst()
                .orElseThrow()
                .total();
    }

    private static BuildSpread spread(Scenario scenario, String reading) {
        return BuildSpread.of(scenario, CATALOGUE, reading(reading), 5_000, Progress.NONE)
                .orElseThrow();
    }

    @Test
    void spread_ofACellNearItsLimit_tellsTheOdds() {
        Scenario near = ONE_CELL.withPart("coil", part -> part.with("ohm", 0.32));
        BuildSpread spread = BuildSpread.of(near, CATALOGUE, reading("A.current_A"), 400, Progress.NONE)
                .orElseThrow();

        assertEquals(0.5, spread.overLimit().orElseThrow(), 0.15);
        assertTrue(spread.cautions().stream()
                .anyMatch(odds -> odds.caution().id().equals("cell-over-limit") && odds.share() > 0.3));
        assertEquals(
                spread,
                BuildSpread.of(near, CATALOGUE, reading("A.current_A"), 400, Progress.NONE)
                        .orElseThrow());
        assertEquals(Optional.empty(), BuildSpread.of(near, CATALOGUE, reading("A.current_A"), 400, share -> false));
    }
}
