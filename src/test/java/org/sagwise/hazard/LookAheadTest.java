package org.sagwise.hazard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.sagwise.assessment.Assessment;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ScenarioReader;
import org.sagwise.part.Catalogue;
import org.sagwise.scenario.Scenario;

/** What only time shows, found without being asked. */
class LookAheadTest {

    private static final Catalogue CATALOGUE = CatalogueLoader.builtIn();

    private static Assessment look(Scenario scenario) {
        return Assessment.of(scenario, CATALOGUE).lookingAhead();
    }

    private static Assessment look(String parts, String links) {
        String file = "{\"sagwise\": 1, \"parts\": [" + parts + "], \"links\": [" + links + "]}";
        return look(new ScenarioReader(CATALOGUE)
                .read(file.getBytes(StandardCharsets.UTF_8))
                .scenario()
                .orElseThrow());
    }

    private static String ids(Assessment assessment) {
        return assessment.cautions().stream().map(Caution::id).collect(Collectors.joining(" "));
    }

    static Caution one(Assessment assessment, String id) {
        List<Caution> found = assessment.cautions().stream()
                .filter(caution -> caution.id().equals(id))
                .toList();
        assertEquals(1, found.size(), ids(assessment));
        return found.get(0);
    }

    private static String cell(String id, String model, String more) {
        return "{\"id\": \"%s\", \"kind\": \"cell\", \"model\": \"%s\", %s}".formatted(id, model, more);
    }

    private static String touch(String from, String to) {
        return "{\"from\": \"%s\", \"to\": \"%s\", \"contact_mohm\": 4}".formatted(from, to);
    }

    /**
     * A full cell and one at a fifth in a row on 1 A: the charger waits for 8.4 V of the row, and the full one is
     * overfilled. From full at 1 A a cell of 2500 mAh gains a tenth of its charge in 900 s, so it is well before that.
     */
    @Test
    void added_unevenRowOnACharger_overchargeIsFoundWithItsTime() {
        Caution caution = one(unevenRowOnACharger(), "ahead-overcharged");
        assertEquals(Signal.WARNING, caution.signal());
        assertEquals(List.of("A"), caution.parts());
        double atS = LookAhead.atS(caution).orElseThrow();
        assertTrue(atS > 60 && atS < 1200, () -> "after " + atS + " s");
    }

    private static Assessment unevenRowOnACharger() {
        return look(
                cell("A", "inr18650-2500-20A", "\"charge\": 1") + ", "
                        + cell("B", "inr18650-2500-20A", "\"charge\": 0.2")
                        + ", {\"id\": \"bay\", \"kind\": \"charger\", \"current_A\": 1, \"limit_V\": 8.4}",
                touch("A.-", "B.+") + ", " + touch("bay.+", "A.+") + ", " + touch("bay.-", "B.-"));
    }

    /** One worn cell among four in a row is empty while three still push: it is reversed with the coil still hot. */
    @Test
    void added_wornCellInARowOfFour_reversalIsFound() {
        assertEquals(List.of("D"), one(wornCellInARowOfFour(), "ahead-reversed").parts());
    }

    /** At many amps the first cut-off comes with half of the charge left; however worn, the worse is not told milder. */
    @ParameterizedTest
    @ValueSource(doubles = {0.4, 0.45, 0.5, 0.52, 0.6, 0.7})
    void added_wornCellInARowOfTwoAtManyAmps_reversalIsFound(double health) {
        Assessment row = look(
                String.join(
                        ", ",
                        cell("A", "inr18650-2500-20A", "\"charge\": 1"),
                        cell("B", "inr18650-2500-20A", "\"charge\": 1, \"health\": " + health),
                        "{\"id\": \"fire\", \"kind\": \"switch\"}",
                        "{\"id\": \"coil\", \"kind\": \"coil\", \"ohm\": 1}"),
                String.join(
                        ", ",
                        touch("A.+", "fire.1"),
                        touch("fire.2", "coil.1"),
                        touch("coil.2", "B.-"),
                        touch("B.+", "A.-")));
        assertEquals(List.of("B"), one(row, "ahead-reversed").parts());
    }

    private static Assessment wornCellInARowOfFour() {
        String worn = cell("D", "inr18650-2500-20A", "\"charge\": 0.93, \"health\": 0.8");
        return look(
                String.join(
                        ", ",
                        cell("A", "inr18650-2500-20A", "\"charge\": 0.95"),
                        cell("B", "inr18650-2500-20A", "\"charge\": 0.95"),
                        cell("C", "inr18650-2500-20A", "\"charge\": 0.95"),
                        worn,
                        "{\"id\": \"fire\", \"kind\": \"switch\"}",
                        "{\"id\": \"coil\", \"kind\": \"coil\", \"ohm\": 3.2}"),
                String.join(
                        ", ",
                        touch("A.-", "B.+"),
                        touch("B.-", "C.+"),
                        touch("C.-", "D.+"),
                        touch("A.+", "fire.1"),
                        touch("fire.2", "coil.1"),
                        touch("coil.2", "D.-")));
    }

    private static final String SWITCH = "{\"id\": \"fire\", \"kind\": \"switch\"}";

    private static String board(int powerW, double cutoffV) {
        return "{\"id\": \"board\", \"kind\": \"board\", \"power_W\": %d, \"cutoff_V\": %s, \"max_input_A\": 60}"
                .formatted(powerW, cutoffV);
    }

    private static String coil(String keys) {
        return "{\"id\": \"coil\", \"kind\": \"coil\", %s}".formatted(keys);
    }

    private static String behindBoard(String first, String plus, String minus) {
        return String.join(
                ", ",
                first,
                touch("fire.2", plus),
                touch(minus, "board.in-"),
                touch("board.out+", "coil.1"),
                touch("board.out-", "coil.2"));
    }

    /** 30 W from a sagging cell: the board's cut-off comes with much of the charge unused. */
    private static Assessment boardThatGivesUp() {
        return look(
                String.join(
                        ", ",
                        cell("A", "ncr18650-3500-10A", "\"charge\": 1"),
                        board(30, 3.1),
                        SWITCH,
                        coil("\"ohm\": 0.3")),
                behindBoard(touch("A.+", "fire.1"), "board.in+", "A.-"));
    }

    /** As the volts sag, a board takes more amps: a protected cell just within its guard's limit passes it later. */
    private static Assessment guardThatOpens() {
        return look(
                String.join(
                        ", ",
                        cell("A", "inr18650-3000-8A-protected", "\"charge\": 1"),
                        board(26, 2.6),
                        SWITCH,
                        coil("\"ohm\": 0.3")),
                behindBoard(touch("A.+", "fire.1"), "board.in+", "A.-"));
    }

    private static String pair() {
        return cell("A", "inr18650-2000-30A", "\"charge\": 1") + ", " + cell("B", "inr18650-2000-30A", "\"charge\": 1");
    }

    /** 57 W of 92 % from two cells: 7.6 A at first, 9.6 A near the end, through a fuse of 8 A. */
    private static Assessment fuseThatMelts() {
        return look(
                String.join(
                        ", ",
                        pair(),
                        board(57, 4.5),
                        SWITCH,
                        coil("\"ohm\": 0.3"),
                        "{\"id\": \"fuse\", \"kind\": \"fuse\", \"rating_A\": 8, \"mohm\": 10}"),
                behindBoard(
                        touch("A.+", "fire.1") + ", " + touch("A.-", "B.+") + ", " + touch("fuse.2", "board.in+"),
                        "fuse.1",
                        "B.-"));
    }

    /** The same through a resettable fuse that holds 5.8 A: it trips above 8.2 A in the long run. */
    private static Assessment resettableFuseThatTrips() {
        return look(
                String.join(
                        ", ",
                        pair(),
                        board(57, 4.5),
                        SWITCH,
                        coil("\"ohm\": 0.3"),
                        "{\"id\": \"fuse\", \"kind\": \"ptc\", \"hold_A\": 5.8}"),
                behindBoard(
                        touch("A.+", "fire.1") + ", " + touch("A.-", "B.+") + ", " + touch("fuse.2", "board.in+"),
                        "fuse.1",
                        "B.-"));
    }

    /** 13 A from a cell for 10 A, whose PTC trips above 14 A while it is cool, and at less as it warms. */
    private static Assessment cellWhosePtcTrips() {
        return look(
                String.join(", ", cell("A", "ncr18650-3500-10A", "\"charge\": 1"), SWITCH, coil("\"ohm\": 0.255")),
                String.join(", ", touch("A.+", "fire.1"), touch("fire.2", "coil.1"), touch("coil.2", "A.-")));
    }

    private static Assessment rowWhosePtcTrips() {
        return look(
                String.join(
                        ", ",
                        cell("A", "ncr18650-3500-10A", "\"charge\": 1"),
                        cell("B", "ncr18650-3500-10A", "\"charge\": 1"),
                        SWITCH,
                        coil("\"ohm\": 0.51")),
                String.join(
                        ", ",
                        touch("A.+", "fire.1"),
                        touch("A.-", "B.+"),
                        touch("fire.2", "coil.1"),
                        touch("coil.2", "B.-")));
    }

    /** 1 A into 2.6 Ah beyond full: 30 % more within the hour. */
    private static Assessment cellThatOpensItself() {
        return look(
                cell("A", "icr18650-2600-5A", "\"charge\": 1")
                        + ", {\"id\": \"charger\", \"kind\": \"charger\", \"current_A\": 1, \"limit_V\": 5}",
                touch("charger.+", "A.+") + ", " + touch("charger.-", "A.-"));
    }

    private static Assessment wireThatMelts() {
        return look(
                String.join(", ", pair(), board(120, 4.5), SWITCH, coil("\"ohm\": 0.2")),
                behindBoard(
                        "{\"from\": \"A.+\", \"to\": \"fire.1\", \"jumper\": {\"awg\": 26, \"length_mm\": 100}}, "
                                + touch("A.-", "B.+"),
                        "board.in+",
                        "B.-"));
    }

    /** Thin wire, few wraps and 8.4 V: about a watt for each square millimetre, dry. */
    private static Assessment coilThatMelts() {
        return look(
                String.join(
                        ", ",
                        pair(),
                        SWITCH,
                        coil("\"wire\": {\"alloy\": \"fecral-25-5\", \"awg\": 32, \"wraps\": 3, \"inner_mm\": 3,"
                                + " \"legs_mm\": 10}")),
                String.join(
                        ", ",
                        touch("A.+", "fire.1"),
                        touch("A.-", "B.+"),
                        touch("fire.2", "coil.1"),
                        touch("coil.2", "B.-")));
    }

    static Map<String, Supplier<Assessment>> examples() {
        Map<String, Supplier<Assessment>> examples = new TreeMap<>();
        examples.put("ahead-board", LookAheadTest::boardThatGivesUp);
        examples.put("ahead-guard", LookAheadTest::guardThatOpens);
        examples.put("ahead-fuse", LookAheadTest::fuseThatMelts);
        examples.put("ahead-ptc", LookAheadTest::resettableFuseThatTrips);
        examples.put("ahead-cell-ptc", LookAheadTest::cellWhosePtcTrips);
        examples.put("ahead-cell-ptc-fails", LookAheadTest::rowWhosePtcTrips);
        examples.put("ahead-cid", LookAheadTest::cellThatOpensItself);
        examples.put("ahead-wire-melts", LookAheadTest::wireThatMelts);
        examples.put("ahead-coil-melts", LookAheadTest::coilThatMelts);
        examples.put("ahead-overcharged", LookAheadTest::unevenRowOnACharger);
        examples.put("ahead-reversed", LookAheadTest::wornCellInARowOfFour);
        return examples;
    }

    static Set<String> ids() {
        return examples().keySet();
    }

    /** Each is found, comes after the first moment, and has its words in both languages. */
    @ParameterizedTest
    @MethodSource("ids")
    void added_itsExample_isFoundAndSaid(String id) {
        Caution caution = one(examples().get(id).get(), id);
        assertTrue(LookAhead.atS(caution).orElseThrow() > 0);
        for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            String said = CautionTexts.title(caution, locale)
                    + CautionTexts.text(caution, locale)
                    + CautionTexts.advice(caution, locale);
            assertFalse(said.contains("{") || said.matches(".*\\b(unknown|unbekannt)\\b.*"), said);
        }
    }

    @Test
    void bundle_itsTexts_haveAnExampleEach() {
        Set<String> texts = ResourceBundle.getBundle("org.sagwise.texts.cautions", Locale.ENGLISH).keySet().stream()
                .filter(key -> key.startsWith("ahead-"))
                .map(key -> key.substring(0, key.indexOf('.')))
                .collect(Collectors.toSet());
        assertEquals(texts, examples().keySet());
    }

    @Test
    void added_boardThatAsksTooMuch_givesUpWithChargeLeft() {
        Caution caution = one(boardThatGivesUp(), "ahead-board");
        assertTrue((double) caution.details().get("chargeShare") > 0.2);
    }

    @Test
    void added_soundPair_findsNothing() {
        for (String demo : List.of("two-by-two", "two-cells-side-by-side", "one-cell-on-half-an-ohm", "two-in-a-row")) {
            Scenario scenario = new ScenarioReader(CATALOGUE)
                    .read(DemoScenarios.bytes(demo))
                    .scenario()
                    .orElseThrow();
            Assessment first = Assessment.of(scenario, CATALOGUE);
            assertEquals(first.cautions(), first.lookingAhead().cautions(), demo);
        }
    }

    /** Whoever is in danger now need not hear what comes later. */
    @Test
    void added_dangerAtOnce_saysNoMore() {
        Scenario scenario = new ScenarioReader(CATALOGUE)
                .read(DemoScenarios.bytes("side-by-side-one-reversed"))
                .scenario()
                .orElseThrow();
        assertEquals("reversed-in-parallel", ids(look(scenario)));
    }
}
