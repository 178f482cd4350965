package org.sagwise.hazard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.assessment.Assessment;
import org.sagwise.assessment.fix.Fixes;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.fixture.Circuits;
import org.sagwise.part.PartKind;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.run.Basis;
import org.sagwise.scenario.Scenario;

/**
 * All cautions that have an example, read as one in a hurry reads them: how grave they are, what they say and what they
 * advise must not contradict one another, in any language.
 */
class AdviceTest {

    private static final List<Locale> LANGUAGES = List.of(Locale.ENGLISH, Locale.GERMAN);

    /** Words for what hurts people. */
    private static final Pattern HARM = Pattern.compile(
            "(?i)\\b(vent|burst|explode|set fire|start a fire)\\b|\\b(ausgasen|ausgast|platzen|in Brand)\\b");

    /** Advice that puts hands on cells. */
    private static final Pattern HANDS_ON = Pattern.compile(
            "(?i)\\btake (the|them|both|all|each)?\\s?(cells? )?out\\b|\\b(nimm|nehmt|nehmen)\\b[^.:;]*\\bheraus\\b");

    /** What must come before it where cells may be hot. */
    private static final Pattern COOL_FIRST = Pattern.compile(
            "(?i)\\b(once (they are )?cool|do not touch hot|while (they are )?cool|do not press|before anything)\\b"
                    + "|kühl|abgekühlt|heiße Zellen|Drücke (den Taster )?nicht|bevor etwas");

    private static final Pattern NOT_AGAIN =
            Pattern.compile("(?i)\\b(never|neither|not)\\b[^.;:]*\\bagain\\b|\\bnever again\\b"
                    + "|\\b(nie|keine|nicht)\\b[^.;:]*\\b(wieder|mehr)\\b|do not (re)?charge|lade[^.;:]*(nicht|keine|nie)"
                    + "|never recharge|do not use");

    private static final Pattern BUTTON = Pattern.compile(
            "\\b([Bb]utton|[Ll]et (it )?go|[Pp]ress(es|ed)?|Taster|[Ll]oslassen|Lass [^.]*los|Drücke)\\b");

    /** A caution and the bench that it was found on. */
    private record Case(Caution caution, Assessment assessment) {}

    private static Map<String, Case> cases() {
        Map<String, Case> cases = new TreeMap<>();
        Examples.all().forEach((example, scenario) -> {
            Assessment assessment = Assessment.of(scenario, CatalogueLoader.builtIn());
            String id = example.replaceAll("\\..*", "");
            cases.put(example, new Case(Found.one(id, scenario), assessment));
        });
        LookAheadTest.examples()
                .forEach((id, found) -> cases.put(id, new Case(LookAheadTest.one(found.get(), id), found.get())));
        return cases;
    }

    private static final Map<String, Case> CASES = cases();

    static Stream<String> examples() {
        return CASES.keySet().stream();
    }

    private static String text(Caution caution, Locale locale) {
        return CautionTexts.title(caution, locale) + ". " + CautionTexts.text(caution, locale);
    }

    @ParameterizedTest
    @MethodSource("examples")
    void text_whatDoesNoHarm_speaksOfNone(String example) {
        Caution caution = CASES.get(example).caution();
        for (Locale locale : LANGUAGES) {
            boolean harms = HARM.matcher(text(caution, locale)).find();
            assertFalse(harms && caution.signal() == Signal.NOTICE, () -> text(caution, locale));
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void text_danger_saysWhatCanHappen(String example) {
        Caution caution = CASES.get(example).caution();
        if (caution.signal() == Signal.DANGER) {
            LANGUAGES.forEach(locale -> assertTrue(
                    Pattern.compile("(?i)vent|burn|burst|fire|brenn|gas|Brand|platz|zünd")
                            .matcher(text(caution, locale))
                            .find(),
                    () -> text(caution, locale)));
        }
    }

    /** Where cells heat, nobody is told to take hold of them before they have cooled. */
    @ParameterizedTest
    @MethodSource("examples")
    void advice_whereCellsHeat_handsComeLast(String example) {
        Caution caution = CASES.get(example).caution();
        if (caution.signal().compareTo(Signal.WARNING) > 0) {
            return;
        }
        for (Locale locale : LANGUAGES) {
            String advice = CautionTexts.advice(caution, locale);
            Matcher hands = HANDS_ON.matcher(advice);
            if (hands.find()) {
                // What makes it right may stand in the same sentence, behind.
                int end = advice.indexOf('.', hands.start());
                assertTrue(
                        COOL_FIRST
                                .matcher(advice.substring(0, end < 0 ? advice.length() : end))
                                .find(),
                        advice);
            }
        }
    }

    /** What the corrected bench says of spent cells, the advice says as well. */
    @ParameterizedTest
    @MethodSource("examples")
    void advice_whereCellsAreSpent_saysSo(String example) {
        Case found = CASES.get(example);
        Caution caution = found.caution();
        boolean spent = !Hazards.spentCells(found.assessment().scenario(), List.of(caution))
                .isEmpty();
        for (Locale locale : LANGUAGES) {
            String advice = CautionTexts.advice(caution, locale);
            assertTrue(!spent || NOT_AGAIN.matcher(advice).find(), () -> example + ": " + advice);
        }
    }

    /** A bench without a button is not told to let one go. */
    @ParameterizedTest
    @MethodSource("examples")
    void say_withoutAButton_speaksOfNone(String example) {
        Case found = CASES.get(example);
        if (found.assessment().scenario().partsOf(PartKind.SWITCH).isEmpty()) {
            for (Locale locale : LANGUAGES) {
                String said = text(found.caution(), locale) + " " + CautionTexts.advice(found.caution(), locale);
                assertFalse(BUTTON.matcher(said).find(), () -> example + ": " + said);
            }
        }
    }

    /** Behind a regulated board a coil of more ohms changes nothing for the cells, at 65 W from 4.2 V, for a cell of 12 A. */
    @Test
    void advice_behindABoard_asksForFewerWatts() {
        Scenario board = Examples.withBoard(Circuits.cell("A", 4.2, 40), 0.4, "power_W", 60)
                .withPart("A", cell -> cell.with("limit_A", 12));
        Caution over = Found.one("cell-over-limit", board);
        assertTrue(CautionTexts.advice(over, Locale.ENGLISH).startsWith("Set fewer watts"));
        assertTrue(CautionTexts.advice(over, Locale.GERMAN).startsWith("Stelle weniger Watt ein"));
    }

    /** No real cell keeps up fifteen times its capacity an hour; the limit is the cell's own. */
    @Test
    void numbers_ofAShort_areOfAMoment() {
        Scenario turned = Circuits.turned(Circuits.parallel(1.0, Examples.good("A"), Examples.good("B")), "B");
        Caution caution = Found.one("reversed-in-parallel", turned);
        assertEquals(Basis.TEACHING, Hazards.basis(caution));
        CautionNumbers numbers = CautionNumbers.of(caution, QuantityFormat.forPeople(Locale.ENGLISH))
                .orElseThrow();
        assertTrue(numbers.measured().endsWith(" A for a moment"), numbers.measured());
        assertEquals("20 A", numbers.limit().orElseThrow());
        Caution unequal = Found.one("unequal-charge-in-series", Examples.all().get("unequal-charge-in-series"));
        assertEquals(
                "0.1 V (typical)",
                CautionNumbers.of(unequal, QuantityFormat.forPeople(Locale.ENGLISH))
                        .orElseThrow()
                        .limit()
                        .orElseThrow());
    }

    /**
     * Those that no edit cures which could be made for a person: a hazard that is new must have a cure, or a reason
     * here.
     */
    private static final Map<String, String> NO_EDIT = new TreeMap<>(Map.ofEntries(
            Map.entry("ahead-cid", "beside charger-too-high, which has the cure"),
            Map.entry("ahead-reversed", "beside mixed-health or mixed-capacity, which have the cure"),
            Map.entry("board-trouble.no-power", "a cell this weak drives no board"),
            Map.entry("board-trouble.output-shorted", "somebody must look what touches"),
            Map.entry("cell-charged-above-full", "beside charger-too-high, where a charger does it"),
            Map.entry("fuse-too-large.ptc-wire", "so small a one would trip in use; the wire has its own cure"),
            Map.entry("limit-unknown", "somebody must look it up"),
            Map.entry("married-apart.apart", "where its fellows are is not known"),
            Map.entry("married-apart.mixed", "where its fellows are is not known"),
            Map.entry("open-circuit.apart", "where it belongs is not known"),
            Map.entry("open-circuit.blocked", "two things block, each in its own way"),
            Map.entry("open-circuit.gap", "where it belongs is not known"),
            Map.entry("open-circuit.meter", "what is to be measured is not known"),
            Map.entry("open-circuit.reverse-guard", "turned, it would be over its rating in this example"),
            Map.entry("ptc-over-voltage", "none on the shelf bears more"),
            Map.entry("sources-disagree", "their resistance is not known"),
            Map.entry("supply-charges-cell", "a supply is no charger"),
            Map.entry("unequal-rows-in-parallel", "which cell is to go is not known")));

    @Test
    void cures_ofEveryHazard_areThereOrLeftOutOnPurpose() {
        List<String> without = new ArrayList<>();
        CASES.forEach((example, found) -> {
            if (Fixes.of(found.assessment(), found.caution()).isEmpty()) {
                without.add(example);
            }
        });
        assertEquals(List.copyOf(NO_EDIT.keySet()), without);
    }
}
