package org.sagwise.assessment.fix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.assessment.Assessment;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ScenarioReader;
import org.sagwise.file.ScenarioWriter;
import org.sagwise.fixture.Circuits;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.Signal;
import org.sagwise.part.Catalogue;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/** Cures of the demos that go wrong, and what an offer promises. */
class FixesTest {

    private static final Catalogue CATALOGUE = CatalogueLoader.builtIn();

    private static Scenario demo(String name) {
        return read(DemoScenarios.bytes(name));
    }

    private static Scenario read(byte[] bytes) {
        return new ScenarioReader(CATALOGUE).read(bytes).scenario().orElseThrow();
    }

    private static Assessment assess(Scenario scenario) {
        return Assessment.of(scenario, CATALOGUE);
    }

    static List<String> demos() {
        return DemoScenarios.names();
    }

    /**
     * Coils by hand: rest voltage over 0.8 of the limit, less what cell, switch, wires and contacts
     * take. One cell of 4.20 V and 22 mΩ behind about 8 mΩ: 4.20/16 − 0.030 = 0.233, so 0.24 Ω.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "thin-wire | Use 18 AWG or thicker (the coil's second end to cell A's minus)",
                "too-few-ohms | A coil of at least 0.24 Ω",
                "re-wrapped-cell | A coil of at least 1.21 Ω, In place of shiny cell, take a sound cell such as"
                        + " one of 2000 mAh and 30.0 A",
                "protected-pair-asked-too-much | A coil of at least 0.30 Ω",
                "old-and-new-in-a-row | In place of old cell, take a cell just like new cell",
                "flat-beside-full | Charge cell B by itself to 4.20 V before joining",
                "row-of-two-one-reversed | Turn cell B",
                "row-of-three-one-reversed | Turn cell B",
                "side-by-side-one-reversed | Turn cell B",
                "torn-wrap | In place of cell A and cell B, take cells with a sound wrap",
                "paper-clip-across-the-coil | Take away the joint from the coil's first end to the"
                        + " coil's second end",
                "meter-left-on-amps | Set the meter to volts",
                "side-by-side-with-reverse-guards | Turn cell B",
            })
    void of_faultyDemo_offersTheCure(String name, String expected) {
        List<Offer> offers = Fixes.of(assess(demo(name)));
        assertEquals(
                expected,
                offers.stream().map(offer -> offer.fix().name(Locale.ENGLISH)).collect(Collectors.joining(", ")));
    }

    @ParameterizedTest
    @MethodSource("demos")
    void of_everyDemo_leavesAndBringsNothingGraver(String name) {
        Assessment before = assess(demo(name));
        for (Offer offer : Fixes.of(before)) {
            Signal cured = offer.caution().signal();
            for (Caution left : offer.after().cautions()) {
                boolean known = before.cautions().stream().anyMatch(c -> Fixes.isSame(c, left));
                int order = left.signal().compareTo(cured);
                assertTrue(known ? order >= 0 : order > 0, left.id());
            }
            assertFalse(offer.fix().name(Locale.GERMAN).isBlank());
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
    void apply_offeredFix_givesAFileThatOpens(String name) {
        Scenario before = demo(name);
        for (Offer offer : Fixes.of(assess(before))) {
            Scenario after = offer.fix().apply(before);
            assertEquals(offer.after().scenario(), after);
            String text = ScenarioWriter.write(after);
            assertEquals(after, read(text.getBytes(StandardCharsets.UTF_8)));
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
    void cure_ofEveryDemo_leavesNothingGrave(String name) {
        Assessment before = assess(demo(name));
        Assessment after = Cure.of(before).map(Cure::after).orElse(before);
        assertEquals(
                List.of(),
                after.cautions().stream().filter(c -> c.signal().isGrave()).toList());
    }

    @Test
    void cure_ofAReversedPair_dropsTheNoteAboutIt() {
        Cure cure = Cure.of(assess(demo("side-by-side-one-reversed"))).orElseThrow();
        assertEquals(List.of(), cure.after().scenario().notes());
        assertEquals(List.of(), cure.after().cautions());
        assertEquals(16.9, cure.after().bench().fired().coils().get(0).powerW(), 0.2);
    }

    private static String cure(String parts, String links) {
        String file = "{\"sagwise\": 1, \"parts\": [" + parts + "], \"links\": [" + links + "]}";
        return Cure.of(assess(read(file.getBytes(StandardCharsets.UTF_8)))).orElseThrow().steps().stream()
                .map(fix -> fix.name(Locale.ENGLISH))
                .collect(Collectors.joining("; "));
    }

    private static String cell(String id, String more) {
        return "{\"id\": \"" + id + "\", \"kind\": \"cell\", \"model\": \"inr18650-2500-20A\", " + more + "}";
    }

    private static String touch(String from, String to) {
        return "{\"from\": \"" + from + "\", \"to\": \"" + to + "\", \"contact_mohm\": 4}";
    }

    private static String wire(String from, String to) {
        return "{\"from\": \"" + from + "\", \"to\": \"" + to + "\", \"jumper\": {\"awg\": 26, \"length_mm\": 60}}";
    }

    /** With the three cells alike and full, none is near its limit, and the coil may stay as it is. */
    @Test
    void cure_ofARewrappedAndAnEmptyCell_leavesTheCoilAlone() {
        String parts = String.join(
                ", ",
                cell("A", "\"charge\": 1"),
                cell("B", "\"charge\": 0.3"),
                cell("C", "\"charge\": 1, \"claimed_A\": 40"),
                "{\"id\": \"fire\", \"kind\": \"switch\"}",
                "{\"id\": \"coil\", \"kind\": \"coil\", \"ohm\": 0.2}");
        String links = String.join(
                ", ",
                touch("A.+", "B.+"),
                touch("B.+", "C.+"),
                touch("A.-", "B.-"),
                touch("B.-", "C.-"),
                touch("A.+", "fire.1"),
                touch("fire.2", "coil.1"),
                touch("coil.2", "A.-"));
        assertEquals(
                "In place of cell C, take a cell just like cell A; Charge cell B by itself to 4.20 V before joining",
                cure(parts, links));
    }

    /** Thick wires let more current through, so that the coil follows them. */
    @Test
    void cure_ofAStuckButtonAndThinWires_mendsAllThree() {
        String parts = String.join(
                ", ",
                cell("A", "\"charge\": 1"),
                "{\"id\": \"fire\", \"kind\": \"switch\", \"stuck\": \"closed\"}",
                "{\"id\": \"coil\", \"kind\": \"coil\", \"ohm\": 0.13}");
        String links = String.join(", ", wire("A.+", "fire.1"), wire("fire.2", "coil.1"), wire("coil.2", "A.-"));
        assertEquals(
                "Replace the button; Use 16 AWG or thicker (cell A's plus to the button's first end, the button's"
                        + " second end to the coil's first end, the coil's second end to cell A's minus); A coil of at"
                        + " least 0.24 Ω",
                cure(parts, links));
    }

    @Test
    void cure_ofTwoCoilsTooLow_givesBothMoreOhms() {
        String parts = String.join(
                ", ",
                cell("A", "\"charge\": 0.9"),
                "{\"id\": \"left\", \"kind\": \"coil\", \"ohm\": 0.2}",
                "{\"id\": \"right\", \"kind\": \"coil\", \"ohm\": 0.4}");
        String links = String.join(
                ", ", touch("A.+", "left.1"), touch("A.+", "right.1"), touch("left.2", "A.-"), touch("right.2", "A.-"));
        assertEquals("Coils of more ohms, at least: coil left 0.35 Ω, coil right 0.69 Ω", cure(parts, links));
    }

    /** Charged again, a cell that was far too empty can burn: it is replaced. */
    @Test
    void cure_ofACellFarTooEmpty_isAnotherCell() {
        String parts = cell("A", "\"charge\": 1") + ", " + cell("B", "\"rest_V\": 1.0");
        String links = touch("A.+", "B.+") + ", " + touch("A.-", "B.-");
        assertEquals("In place of cell B, take a cell just like cell A", cure(parts, links));
    }

    /** One that may let 28 A pass, for a cell of 20 A: of those on the shelf the one for 9 A passes at most 18 A. */
    @Test
    void cure_ofAResettableFuseTooLarge_isASmallerOneOfItsSort() {
        Scenario scenario = Scenario.of(
                "Ring",
                List.of(
                        Circuits.cell("A", 4.2, 20),
                        Part.of("F1", PartKind.PTC, "hold_A", 14, "trip_A", 28),
                        Circuits.coil(1.0)),
                List.of(
                        Circuits.ideal("A.+", "F1.1"),
                        Circuits.ideal("F1.2", "coil.1"),
                        Circuits.ideal("coil.2", "A.-")));
        List<Offer> offers = Fixes.of(assess(scenario));

        assertEquals(
                List.of("In place of resettable fuse F1, fit a resettable fuse that holds 9.00 A"),
                offers.stream().map(offer -> offer.fix().name(Locale.ENGLISH)).toList());
    }

    /** A guard turned round in a sound ring: one may turn it, or the cell. */
    @Test
    void cure_ofAGuardTheWrongWayRound_turnsIt() {
        Scenario scenario = Scenario.of(
                "Ring",
                List.of(
                        Circuits.cell("A", 4.2, 20),
                        Part.of("G1", PartKind.REVERSE_GUARD, "rating_A", 30),
                        Circuits.coil(1.0)),
                List.of(
                        Circuits.ideal("A.+", "G1.out"),
                        Circuits.ideal("G1.in", "coil.1"),
                        Circuits.ideal("coil.2", "A.-")));
        List<Offer> offers = Fixes.of(assess(scenario));

        assertEquals(
                List.of("Turn cell A", "Turn reverse guard G1"),
                offers.stream().map(offer -> offer.fix().name(Locale.ENGLISH)).toList());
    }

    @Test
    void turn_twice_isTheSameScenario() {
        Scenario demo = demo("side-by-side-one-reversed");
        Fix turn = Fixes.of(assess(demo)).get(0).fix();
        assertEquals(demo, turn.apply(turn.apply(demo)));
    }

    @Test
    void isCured_graverLeftOrNewAndAsGrave_isRefused() {
        Caution cured = caution("a", Signal.WARNING);
        assertTrue(Fixes.isCured(List.of(cured), cured, List.of()));
        assertTrue(Fixes.isCured(List.of(cured), cured, List.of(caution("b", Signal.CAUTION))));
        assertFalse(Fixes.isCured(List.of(cured), cured, List.of(cured)));
        assertFalse(Fixes.isCured(List.of(cured), cured, List.of(caution("b", Signal.WARNING))));
        Caution graver = caution("c", Signal.DANGER);
        assertFalse(Fixes.isCured(List.of(cured, graver), cured, List.of(graver)));
        Caution asGrave = caution("d", Signal.WARNING);
        assertTrue(Fixes.isCured(List.of(cured, asGrave), cured, List.of(asGrave)));
    }

    private static Caution caution(String id, Signal signal) {
        return new Caution(
                id, signal, List.of("A"), List.of(), Caution.When.ALWAYS, Double.NaN, Double.NaN, "", Map.of());
    }
}
