package org.sagwise.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.sagwise.part.PartKind;

/** People read words, never the keys of a file. */
class NamesTest {

    private static final Scenario BENCH = Scenario.of(
            "",
            List.of(
                    Part.of("A", PartKind.CELL),
                    Part.of("coil", PartKind.COIL),
                    Part.of("coil-2", PartKind.COIL),
                    Part.of("fire", PartKind.SWITCH),
                    Part.of("old", PartKind.CELL, "label", "Lamp"),
                    Part.of("wound", PartKind.COIL, "label", "Wicklung")),
            List.of());

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "A.+ | cell A's plus | Pluspol von Zelle A | A plus",
                "A.- | cell A's minus | Minuspol von Zelle A | A minus",
                "A.can | cell A's can | Becher von Zelle A | A can",
                "coil.1 | the coil's first end | Ende 1 der Wicklung | coil end 1",
                "fire.2 | the button's second end | Ende 2 des Tasters | button end 2",
                "coil-2.1 | coil 2's first end | Ende 1 von Wicklung 2 | coil 2 end 1",
                "old.+ | Lamp's plus | Pluspol von „Lamp“ | Lamp plus",
                "wound.1 | Wicklung's first end | Ende 1 der Wicklung | Wicklung end 1",
                "gone.1 | gone's first end | Ende 1 von „gone“ | gone end 1"
            })
    void terminal_inBothLanguages_isWords(String ref, String english, String german, String brief) {
        TerminalRef terminal = TerminalRef.parse(ref).orElseThrow();
        assertEquals(english, Names.in(Locale.ENGLISH).terminal(BENCH, terminal));
        assertEquals(german, Names.in(Locale.GERMAN).terminal(BENCH, terminal));
        assertEquals(brief, Names.in(Locale.ENGLISH).brief(BENCH, terminal));
    }

    @ParameterizedTest
    @CsvSource({
        "A, A, A",
        "coil, coil, Wicklung",
        "coil-2, coil 2, Wicklung 2",
        "fire, button, Taster",
        "old, Lamp, Lamp"
    })
    void label_ofAnIdThatTheBenchGave_isOfTheLanguage(String id, String english, String german) {
        assertEquals(english, Names.in(Locale.ENGLISH).label(BENCH, id));
        assertEquals(german, Names.in(Locale.GERMAN).label(BENCH, id));
    }

    @ParameterizedTest
    @EnumSource(PartKind.class)
    void terminal_ofEveryKind_hasAName(PartKind kind) {
        Scenario scenario = Scenario.of("", List.of(Part.of("p", kind)), List.of());
        for (TerminalRef terminal : scenario.parts().get(0).terminals()) {
            for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
                String name = Names.in(locale).terminal(scenario, terminal);
                assertFalse(name.contains(terminal.toString()), name);
                assertFalse(Names.in(locale).brief(scenario, terminal).contains("."), name);
            }
        }
    }

    @Test
    void list_ofMany_endsInHowManyMore() {
        Names names = Names.in(Locale.ENGLISH);
        assertEquals("", names.list(List.of()));
        assertEquals("a", names.list(List.of("a")));
        assertEquals("a, b and c", names.list(List.of("a", "b", "c")));
        assertEquals("a, b, c and 2 more", names.list(List.of("a", "b", "c", "d", "e")));
    }
}
