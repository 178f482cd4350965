package org.sagwise.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.sagwise.quantity.Parsed.Reason;
import org.sagwise.quantity.Parsed.Refused;
import org.sagwise.quantity.Parsed.Value;

class QuantityParserTest {

    private static final QuantityParser ENGLISH = new QuantityParser(Locale.ENGLISH);
    private static final QuantityParser GERMAN = new QuantityParser(Locale.GERMAN);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "OHM | 0.3 | 0.3",
                "OHM | .3 | 0.3",
                "OHM | 3. | 3",
                "OHM | 300 mΩ | 0.3",
                "OHM | 300mΩ | 0.3",
                "OHM | 0.3 ohm | 0.3",
                "OHM | 0.3 Ohms | 0.3",
                "OHM | 0,30 Ω | 0.3",
                "OHM | 0,300 Ω | 0.3",
                "OHM | 30 milliohms | 0.03",
                "OHM | 1 MΩ | 1e6",
                "OHM | 4.7 kohm | 4700",
                "OHM | 500 µΩ | 5e-4",
                "OHM | 500 uohm | 5e-4",
                "WATT | 17.6 W | 17.6",
                "WATT | 17.6w | 17.6",
                "VOLT | −1 V | -1",
                "VOLT | -1.0V | -1",
                "VOLT | +4.2 | 4.2",
                "VOLT | 4,2 volts | 4.2",
                "AMPERE_HOUR | 2.5 Ah | 2.5",
                "AMPERE_HOUR | 2500 mAh | 2.5",
                "AMPERE_HOUR | 2500 MAH | 2.5",
                "AMPERE_HOUR | 2 500 mAh | 2.5",
                "AMPERE_HOUR | 2'500 mAh | 2.5",
                "AMPERE_HOUR | 12,345,678 mAh | 12345.678",
                "AMPERE_HOUR | 1,234.5 mAh | 1.2345",
                "AMPERE_HOUR | 1.234,5 mAh | 1.2345",
                "WATT_HOUR | 3600 J | 1",
                "CELSIUS | 25 °C | 25",
                "CELSIUS | 77 °F | 25",
                "CELSIUS | 298.15 K | 25",
                "METRE | 60 mm | 0.06",
                "SQUARE_METRE | 0.82 mm² | 8.2e-7",
                "SQUARE_METRE | 0.82 mm2 | 8.2e-7",
                "FRACTION | 80 % | 0.8",
                "FRACTION | 80% | 0.8",
                "FRACTION | 0.8 | 0.8",
                "SECOND | 3s | 3",
                "SECOND | 500ms | 0.5",
                "SECOND | 2 min | 120",
                "SECOND | 1h30min | 5400",
                "SECOND | 1 h 12 min 5 s | 4325",
                "SECOND | 1:12:05 | 4325",
                "SECOND | 2:05.5 | 125.5",
                "SECOND | 2:05,5 | 125.5",
                "SECOND | −2 min 5 s | -125",
                "OHM | 1e-3 | 0.001",
                "OHM | 1e-999 | 0",
            })
    void parse_acceptedSpelling_isValue(Unit unit, String text, double expected) {
        Value value = assertInstanceOf(Value.class, ENGLISH.parse(text, unit));
        assertEquals(expected, value.amount(), Math.abs(expected) * 1e-15);
    }

    @Test
    void parse_prefixedDecimal_isNearestDouble() {
        for (int milliohm = 1; milliohm < 1000; milliohm++) {
            double nearest = Double.parseDouble(milliohm + "e-3");
            assertEquals(new Value(nearest), ENGLISH.parse(milliohm + " mΩ", Unit.OHM));
        }
    }

    @Test
    void parse_narrowSpacesAndOldOhmSign_areUnderstood() {
        assertEquals(new Value(0.3), ENGLISH.parse("\u00a00.30\u202f\u2126 ", Unit.OHM));
        assertEquals(new Value(5e-6), ENGLISH.parse("5 \u03bcA", Unit.AMPERE));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "EMPTY | '   '",
                "NOT_A_NUMBER | about three",
                "NOT_A_NUMBER | Ω",
                "NOT_A_NUMBER | 1.2.3",
                "NOT_A_NUMBER | 1,2.3,4",
                "NOT_A_NUMBER | NaN",
                "NOT_A_NUMBER | --3",
                "AMBIGUOUS_NUMBER | 1,500",
                "AMBIGUOUS_NUMBER | 12,500 mΩ",
                "UNKNOWN_UNIT | 3 bananas",
                "UNKNOWN_UNIT | 3 MOHM",
                "UNKNOWN_UNIT | 3 4",
                "WRONG_UNIT | 3 W",
                "WRONG_UNIT | 3 min",
                "TOO_LARGE | 1e400",
                "TOO_LARGE | -1e400",
            })
    void parse_badResistance_isRefused(Reason reason, String text) {
        Refused refused = assertInstanceOf(Refused.class, ENGLISH.parse(text, Unit.OHM));
        assertEquals(reason, refused.reason());
    }

    @ParameterizedTest
    @ValueSource(strings = {"5 s 2 min", "1 h 30", "1 h -5 min", "3 s 3 s"})
    void parse_muddledDuration_isRefused(String text) {
        Refused refused = assertInstanceOf(Refused.class, ENGLISH.parse(text, Unit.SECOND));
        assertEquals(Reason.MIXED_DURATION, refused.reason());
    }

    @Test
    void parse_thousandsMark_dependsOnLocale() {
        assertEquals(new Value(1.5), ENGLISH.parse("1.500", Unit.OHM));
        assertInstanceOf(Refused.class, GERMAN.parse("1.500", Unit.OHM));
        assertEquals(new Value(1.5), GERMAN.parse("1,500", Unit.OHM));
        assertInstanceOf(Refused.class, ENGLISH.parse("1,500", Unit.OHM));
    }

    @Test
    void parse_bareNumber_isInTheFieldsScale() {
        Measure milliohms = Measure.of(Unit.OHM, "mΩ");
        assertEquals(new Value(0.03), ENGLISH.parse("30", milliohms));
        assertEquals(new Value(30), ENGLISH.parse("30 Ω", milliohms));
    }

    @Test
    void text_refusal_saysWhatWhereAndExample() {
        Refused refused = (Refused) ENGLISH.parse("17.6 W", Unit.OHM);
        assertEquals(
                "“W” is a unit of power, but resistance is asked for. Write, for example, 0.3 Ω.",
                refused.text(Locale.ENGLISH));
        Refused german = (Refused) GERMAN.parse("2.500", Unit.AMPERE_HOUR);
        assertEquals(
                "„2.500“ kann 2,5 oder 2500 bedeuten. Schreib die gemeinte Zahl ohne" + " Tausenderzeichen.",
                german.text(Locale.GERMAN));
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void text_everyUnit_offersAnExampleThatIsAccepted(Unit unit) {
        for (Scale scale : unit.scales()) {
            Refused refused = (Refused) GERMAN.parse("?", new Measure(unit, scale));
            String example = refused.details().get(1).word();
            assertTrue(GERMAN.parse(example, unit).value().isPresent(), example);
            assertTrue(refused.text(Locale.GERMAN).contains(example));
        }
    }

    @Test
    void ofKey_endingOfKey_isItsUnit() {
        assertEquals(Measure.of(Unit.OHM, "mΩ"), Measure.ofKey("internal_mohm").orElseThrow());
        assertEquals(
                Measure.of(Unit.SQUARE_METRE, "mm²"), Measure.ofKey("area_mm2").orElseThrow());
        assertEquals(Measure.of(Unit.AMPERE), Measure.ofKey("limit_A").orElseThrow());
        assertTrue(Measure.ofKey("awg").isEmpty());
        assertTrue(Measure.ofKey("ohm").isPresent());
    }
}
