package org.sagwise.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ScenarioReader;
import org.sagwise.part.Catalogue;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/** Lines of trade words, and what becomes of them. */
class TradeWordsTest {

    private static final Catalogue CATALOGUE = CatalogueLoader.builtIn();
    private static final Pattern EXAMPLES = Pattern.compile("```words\\n(.*?)```", Pattern.DOTALL);

    static Scenario built(String line) {
        WordsBench answer = TradeWords.read(line, CATALOGUE, Locale.ENGLISH);
        if (answer instanceof WordsBench.Refused refused) {
            throw new AssertionError(line + "\n"
                    + refused.complaints().stream()
                            .map(complaint -> complaint.text(Locale.ENGLISH))
                            .toList());
        }
        return answer.scenario().orElseThrow();
    }

    private static List<String> assumed(String line) {
        return assertInstanceOf(WordsBench.Built.class, TradeWords.read(line, CATALOGUE, Locale.ENGLISH))
                .assumed()
                .stream()
                .map(Assumed::key)
                .toList();
    }

    private static Keys of(Scenario bench, String id) {
        return bench.part(id).orElseThrow().keys();
    }

    private static Joint joint(Scenario bench, String one, String other) {
        TerminalRef from = TerminalRef.parse(one).orElseThrow();
        TerminalRef to = TerminalRef.parse(other).orElseThrow();
        return bench.links().stream()
                .filter(link -> link.joins(from, to))
                .findFirst()
                .orElseThrow(() -> new AssertionError(one + " and " + other + " are not joined"))
                .joint();
    }

    static List<String> examples() throws IOException {
        Matcher block = EXAMPLES.matcher(Files.readString(Path.of("docs/words.md")));
        assertTrue(block.find());
        return block.group(1).lines().toList();
    }

    @Test
    void documentation_hasTwentyExamples() throws IOException {
        assertEquals(20, examples().size());
    }

    @ParameterizedTest
    @MethodSource("examples")
    void example_ofTheDocumentation_isBuiltAndSaidAgainInBothLanguages(String line) {
        Scenario bench = built(line);
        for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            String said = TradeWords.write(bench, CATALOGUE, locale).line().orElseThrow();
            Scenario again = TradeWords.read(said, CATALOGUE, locale).scenario().orElseThrow();
            assertEquals(said, TradeWords.write(again, CATALOGUE, locale).line().orElseThrow(), line);
            assertEquals(bench.parts().size(), again.parts().size(), said);
        }
    }

    @Test
    void contractsExample_isTheBenchItSays() {
        Scenario bench = built("2p inr18650-2500-20A at 4.15 V; B reversed; coil 0.5; wire 18awg 60mm");

        assertEquals(4.15, of(bench, "A").number("rest_V", 0));
        assertEquals("inr18650-2500-20A", of(bench, "B").text("model").orElseThrow());
        assertEquals(0.5, of(bench, "coil").number("ohm", 0));
        assertEquals(new Joint.Touch(4), joint(bench, "A.+", "B.-"));
        assertEquals(new Joint.Jumper(new Joint.Awg(18), 60, 4), joint(bench, "A.+", "switch.1"));
        assertTrue(bench.about().contains("`2p inr18650-2500-20A at 4.15 V; B reversed; coil 0.5; wire 18awg 60mm`"));
        assertEquals("2P on 0.50 Ω", bench.title());
    }

    @Test
    void numbers_withoutALimit_leaveItUnknownAndSaySo() {
        String line = "2p 2600 mAh; coil 0.5; wire 16awg 60mm; contacts clip; button";
        Scenario bench = built(line);

        assertTrue(of(bench, "A").number("limit_A").isEmpty());
        assertEquals(List.of("internal_mohm", "limit", "full"), assumed(line));
    }

    @Test
    void everythingSaid_assumesNothing() {
        assertEquals(
                List.of(),
                assumed("1s inr18650-2500-20A full; coil 0.5; wire 16awg 60mm; contacts 4 mohm; button 3 mohm"));
    }

    @Test
    void joint_ofACell_isBetweenItAndThePlate() {
        assertEquals(new Joint.Touch(150), joint(built("3p inr18650-2500-20A; C joint loose 150 mohm"), "A.+", "C.+"));
        assertEquals(new Joint.Touch(60), joint(built("2p inr18650-2500-20A; A joint loose"), "A.+", "B.+"));
        assertEquals(new Joint.Touch(60), joint(built("2s inr18650-2500-20A; B joint loose"), "A.-", "B.+"));
    }

    @Test
    void coils_sideBySide_eachHaveTheirLeg() {
        Scenario bench = built("1s inr18650-2500-20A; 2 coils 0.5; coil 1 joint loose 150 mohm");

        assertEquals(2, bench.partsOf(PartKind.COIL).size());
        assertEquals(new Joint.Touch(150), joint(bench, "coil-2.1", "coil-1.1"));
    }

    @Test
    void charger_holdsThePackWithoutAButton() {
        Scenario bench = built("2s 2500 mAh 20 A; charger 1 A");

        assertEquals(List.of(), bench.partsOf(PartKind.SWITCH));
        assertEquals(8.4, of(bench, "charger").number("limit_V", 0));
    }

    @Test
    void exception_ofAnotherModel_dropsTheNumbersOfTheOthers() {
        Scenario bench = built("2p 2500 mAh 30 mohm at 4.1 V; B re-wrapped; coil 1");

        Part b = bench.part("B").orElseThrow();
        assertEquals("icr18650-1200-4A-rewrapped", b.model().orElseThrow());
        assertEquals(4.1, b.keys().number("rest_V", 0));
        assertTrue(b.keys().number("internal_mohm").isEmpty());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2 cells 2500 mAh; coil 0.5 | 1 | WHICH_LAYOUT",
                "2p 2500 mAh; D reversed | 14 | NO_SUCH_CELL",
                "2500 mAh 20 A; B reversed | 16 | NO_LAYOUT",
                "2p 2500 mAh; coil 0.5 ohn | 23 | UNKNOWN_NEAR",
                "2p inr18650-2500-20; coil 0.5 | 4 | UNKNOWN_NEAR",
                "2p 2500 mAh 20; coil 0.5 | 13 | NO_UNIT",
                "1s 2500 mAh; button 4 V | 21 | NOT_OF",
                "1s 2500 mAh; fuse; coil 1 | 14 | NO_VALUE",
                "1s 4.1 V 3.9 V; coil 1 | 10 | TWICE",
                "1s 2p 2500 mAh; coil 1 | 4 | TWICE",
                "1s 2500 mAh; coil fecral 24awg | 14 | WOUND_LACKS",
                "1s 2500 mAh; coil 0.5; cold | 24 | NO_TEMPERATURE",
                "1s 2500 mAh; coil 0.5; joint loose | 24 | NO_SUCH_PLACE",
                "1s 2500 mAh; coil 0.5; coil joint | 29 | WHICH_JOINT",
                "40p 2500 mAh | 1 | TOO_MANY_CELLS",
                "1s 2500 mAh; coil 0.5; coil 2 joint loose | 29 | NO_SUCH_COIL",
                "1s 2500 mAh 9000000 A; coil 1 | 13 | OUT_OF_RANGE",
                "1s 1,500 mAh; coil 1 | 4 | AMBIGUOUS_NUMBER",
                "1s 2 500 mAh; coil 1 | 4 | WHICH_LAYOUT",
            })
    void mistake_isToldWithItsPlace(String line, int column, String fault) {
        WordsBench answer = TradeWords.read(line.strip(), CATALOGUE, Locale.ENGLISH);

        Complaint first = assertInstanceOf(WordsBench.Refused.class, answer, line)
                .complaints()
                .get(0);
        assertEquals(fault, first.finding().problem().name(), first.text(Locale.ENGLISH));
        assertEquals(column, first.span().column(), first.text(Locale.ENGLISH));
        assertTrue(!first.text(Locale.GERMAN).isBlank());
    }

    /** A part's number and its ohms are two numbers, not one with a gap for its thousands. */
    @Test
    void number_behindThatOfAPart_isItsOwn() {
        Scenario bench = built("1s 2500 mAh 20 A; coil 1 1; joint of coil 2 200 mohm");

        assertEquals(new Joint.Touch(200), joint(bench, "coil-1.1", "coil-2.1"));
    }

    /** Lines as people write them, and what they mean. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2x 18650 2500mAh 20A in parallel, coil 0.5ohm | 2p inr18650-2500-20A; coil 0.5",
                "two 3000mAh 15A in series; 0.4 ohm coil | 2s inr18650-3000-15A; coil 0.4",
                "single 21700 4000mAh 30A @ 4.1V; coil .15 | 1s inr21700-4000-30A at 4.1 V; coil 0.15",
                "2 cells side by side 2500 mAh 20 A; fused at 15A; coil 0.5 | 2p inr18650-2500-20A; fuse 15 A; coil 0.5",
                "2p 2500 mAh 20 A, B flipped, coil: 0.5 Ω, wires: 18 AWG, 60 mm "
                        + "| 2p inr18650-2500-20A; B reversed; coil 0.5; wire 18awg 60mm",
                "Drei Akkus in Reihe 2500 mAh 20 A; Verbindung B locker; Wicklung 0,8 "
                        + "| 3s inr18650-2500-20A; B joint loose; coil 0.8",
                "coil 0.5; held; 2p inr18650-2500-20A | 2p inr18650-2500-20A; coil 0.5; held",
                "1s inr18650-2500-20A; coil 2 × 0.5 | 1s inr18650-2500-20A; 2 coils 0.5",
            })
    void line_asPeopleWriteIt_meansTheSame(String written, String meant) {
        Scenario one = built(written.strip());
        Scenario other = built(meant.strip());

        assertEquals(other.parts(), one.parts());
        assertEquals(other.links(), one.links());
        assertEquals(other.fired(), one.fired());
    }

    @Test
    void layout_saidTwiceAndDifferently_isNotChosenBetween() {
        assertInstanceOf(
                WordsBench.Refused.class,
                TradeWords.read("2s in parallel 2500 mAh; coil 1", CATALOGUE, Locale.ENGLISH));
    }

    static Stream<String> demos() {
        return DemoScenarios.names().stream();
    }

    /** Those that have something for which a line has no words; whoever teaches it one takes its name out here. */
    private static final List<String> WITHOUT_WORDS = List.of(
            "meter-left-on-amps",
            "paper-clip-across-the-coil",
            "side-by-side-with-reverse-guards",
            "torn-wrap",
            "two-by-two");

    @ParameterizedTest
    @MethodSource("demos")
    void demo_isSaidInALineOrToldWhyNot(String name) {
        Scenario demo = new ScenarioReader(CATALOGUE)
                .read(DemoScenarios.bytes(name))
                .scenario()
                .orElseThrow();

        SaidBench said = TradeWords.write(demo, CATALOGUE, Locale.GERMAN);

        assertEquals(WITHOUT_WORDS.contains(name), said.line().isEmpty(), name + " " + said);
    }
}
