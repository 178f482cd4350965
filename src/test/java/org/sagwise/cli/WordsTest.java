package org.sagwise.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.hazard.Caution;
import org.sagwise.part.PartKind;
import org.sagwise.reading.Ledger;
import org.sagwise.reading.Notice;
import org.sagwise.reading.PartReading;
import org.sagwise.text.Texts;

/** What people read: tables, languages, signs. */
class WordsTest {

    private static Stream<String> words(String prefix, Enum<?>... values) {
        return Arrays.stream(values)
                .map(value -> prefix + value.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void bundle_everyWordThatIsLookedUp_isThere(String language) {
        Texts texts = Texts.in("cli-words", Locale.forLanguageTag(language));
        Stream.of(
                        words("ledger.", Ledger.Entry.values()),
                        words("notice.", Notice.Kind.values()),
                        words("caution.when.", Caution.When.values()),
                        words("state.", PartReading.State.values()).filter(key -> !key.equals("state.working")),
                        Stream.of(
                                        PartKind.SWITCH,
                                        PartKind.FUSE,
                                        PartKind.BOARD,
                                        PartKind.CHARGER,
                                        PartKind.SUPPLY,
                                        PartKind.METER)
                                .map(kind -> "kind." + kind.word()),
                        catalogueKeys())
                .flatMap(keys -> keys)
                .forEach(key -> assertTrue(texts.has(key), key));
    }

    private static Stream<String> catalogueKeys() {
        List<CatalogueFamily> families = CatalogueFamily.all(CatalogueLoader.builtIn());
        Stream<String> names = families.stream().map(CatalogueFamily::key);
        Stream<String> numbers = families.stream()
                .flatMap(family -> family.entries().stream())
                .flatMap(entry -> keys("part.", PartNumbers.of(entry)));
        Stream<String> sources = families.stream()
                .flatMap(family -> family.entries().stream())
                .flatMap(entry -> entry.card().sources().keySet().stream())
                .map(key -> "part." + key);
        return Stream.of(names, numbers, sources).flatMap(keys -> keys);
    }

    private static Stream<String> keys(String prefix, Map<?, ?> numbers) {
        return numbers.entrySet().stream()
                .flatMap(entry -> entry.getValue() instanceof Map<?, ?> inner
                        ? keys(prefix + entry.getKey() + ".", inner)
                        : Stream.of(prefix + entry.getKey()));
    }

    @Test
    void readings_ofTheBenchCheck_areATable() {
        String expected = """
                The bench check: where did the volts go?
                Button held, the instant of firing: cells relaxed, coil cold, 25 °C around.

                Cell     rest   terminal      sag   current    limit   load
                A      4.14 V     3.80 V   0.34 V    11.3 A   20.0 A   56 %

                Coil   resistance    volts   current    watts
                coil       0.30 Ω   3.38 V    11.3 A   38.1 W

                On the way                                                     current      drop      heat
                fire button                  switch                             11.3 A   33.8 mV   0.381 W
                A plus › fire button end 1   wire AWG 18, 240 mm, ends 12 mΩ    11.3 A    0.19 V    2.18 W
                coil end 2 › A minus         wire AWG 18, 240 mm, ends 12 mΩ    11.3 A    0.19 V    2.18 W

                Ledger                     volts       watts
                given at rest voltage    4.140 V    46.670 W
                sag inside the cells    −0.338 V    −3.812 W
                contacts and wires      −0.386 V    −4.353 W
                switches                −0.034 V    −0.381 W
                coils                   −3.382 V   −38.123 W
                balance                  0.000 V     0.000 W
                Of 46.7 W given, 38.1 W arrive: 82 %.

                Meter, red on cell A's plus, black on cell A's minus: 3.80 V

                Joints and health
                what              ohms            usual   verdict
                Cell A           30 mΩ   16 mΩ to 65 mΩ   like new
                Fire button       3 mΩ         to 10 mΩ   sound
                2 joints, each    6 mΩ         to 10 mΩ   sound

                Cautions: none.

                A teaching model and no clearance to build: the cell maker's data sheet, local
                rules and qualified people come first.
                """;
        String printed = Cli.call("readings", Cli.demo("bench-check")).out();
        assertEquals(squeezed(expected), squeezed(printed));
    }

    /** Line breaks of every system, and whatever room the longest line asks of a column. */
    private static String squeezed(String text) {
        return text.replace("\r\n", "\n").replaceAll(" {2,}", "  ").strip();
    }

    @Test
    void readings_inGerman_haveGermanWordsAndCommas() {
        String printed =
                Cli.call("readings", Cli.demo("bench-check"), "--lang", "de").out();
        assertTrue(printed.contains("3,80 V"), printed);
        assertTrue(printed.contains("Taster gedrückt"), printed);
    }

    @ParameterizedTest
    @ValueSource(strings = {"readings", "check"})
    void anything_inAscii_holdsNothingBeyond(String verb) {
        for (String language : new String[] {"en", "de"}) {
            String file = Cli.demo("two-side-by-side-ideal");
            String printed = Cli.call(verb, file, "--ascii", "--lang", language).out();
            assertTrue(printed.chars().allMatch(sign -> sign < 0x80), printed);
        }
    }

    @Test
    void help_inGermanAndAscii_holdsNothingBeyond() {
        String printed = Cli.call("--help", "--ascii", "--lang=de").out();
        assertTrue(printed.contains("Oeffnet die Werkbank"), printed);
        assertTrue(printed.chars().allMatch(sign -> sign < 0x80), printed);
    }

    @Test
    void title_thatSteersATerminal_doesNothing() {
        String file = "{\"sagwise\":1,\"title\":\"\\u001b[31mred\\u202e\",\"parts\":[],\"links\":[]}";
        String printed = Cli.callWithInput(file, "readings", "-").out();
        assertTrue(printed.contains("?[31mred?"), printed);
        assertFalse(printed.contains("\u001b"));
    }

    @Test
    void links_againstTheCurrent_areTurnedRound() {
        String printed = Cli.call("readings", Cli.demo("two-in-a-row")).out();
        assertTrue(printed.contains("B plus › A minus"), printed);
    }

    @Test
    void parts_list_showsEveryEntry() {
        String printed = Cli.call("parts").out();
        CatalogueFamily.all(CatalogueLoader.builtIn()).stream()
                .flatMap(family -> family.entries().stream())
                .forEach(entry -> assertTrue(printed.contains(entry.id()), entry.id()));
    }

    @Test
    void parts_card_showsNumbersAndSources() {
        String printed = Cli.call("parts", "inr18650-2500-20A").out();
        assertTrue(printed.contains("internal resistance          22 mΩ"), printed);
        assertTrue(printed.contains("Where the numbers come from"), printed);
    }

    @Test
    void parts_json_alwaysHasEveryFamily() {
        var one = Cli.call("parts", "inr18650-3000-8A-protected", "--json").json();
        var all = Cli.call("parts", "--json").json();
        assertEquals(12, all.size());
        assertEquals(12, one.size());
        assertEquals(1, one.get("cells").size());
        assertEquals(8, one.get("cells").get(0).get("guard").get("trip_A").doubleValue());
        assertEquals(40, one.get("cells").get(0).get("guard").get("mohm").doubleValue());
    }
}
