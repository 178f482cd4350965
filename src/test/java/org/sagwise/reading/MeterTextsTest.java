package org.sagwise.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.sagwise.fixture.Circuits.cell;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.sagwise.reading.MeterDisplay.Amps;
import org.sagwise.reading.MeterDisplay.Ohms;
import org.sagwise.reading.MeterDisplay.Refused;
import org.sagwise.reading.MeterDisplay.Volts;
import org.sagwise.reading.MeterDisplay.Why;
import org.sagwise.scenario.Scenario;

/** What the meter in the hand says, in both languages. */
class MeterTextsTest {

    private static final Scenario BENCH =
            Scenario.of("", List.of(cell("A", 4, 30).with("label", "old cell")), List.of());

    @ParameterizedTest
    @EnumSource(Why.class)
    void sentence_ofEachRefusal_saysWhatToDoInBothLanguages(Why why) {
        Refused refused = new Refused(why, "A", 131);
        for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            MeterTexts texts = MeterTexts.in(locale);
            assertEquals("—", texts.figure(refused));
            assertFalse(texts.caption(refused).isEmpty());
            String sentence = texts.sentence(refused, BENCH);
            assertFalse(sentence.contains("{"), sentence);
            boolean named = why == Why.PAST_LOAD || why == Why.SHORT || why == Why.ALIVE;
            assertEquals(named, sentence.contains("old cell"), sentence);
            assertEquals(why == Why.SHORT || why == Why.ABOVE_FUSE, sentence.contains("131"), sentence);
        }
        assertFalse(MeterTexts.in(Locale.ENGLISH)
                .sentence(refused, BENCH)
                .equals(MeterTexts.in(Locale.GERMAN).sentence(refused, BENCH)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void figure_ofReadings_hasItsUnit(String language) {
        MeterTexts texts = MeterTexts.in(Locale.forLanguageTag(language));
        assertTrue(texts.figure(new Volts(4)).endsWith("V"));
        assertTrue(texts.figure(new Amps(4, OptionalInt.of(0))).endsWith("A"));
        assertTrue(texts.figure(new Ohms(0.3)).endsWith("Ω"));
        assertTrue(texts.figure(new Ohms(Double.POSITIVE_INFINITY)).matches("open|offen"));
        assertEquals("—", texts.figure(new Volts(Double.NaN)));
        assertEquals("", texts.sentence(new Volts(4), BENCH));
        assertTrue(texts.sentence(new Amps(4, OptionalInt.of(0)), BENCH).contains("10 mΩ"));
    }
}
