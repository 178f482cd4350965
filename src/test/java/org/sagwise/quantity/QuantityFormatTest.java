package org.sagwise.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityFormatTest {

    private static final QuantityFormat ENGLISH = QuantityFormat.forPeople(Locale.ENGLISH);
    private static final QuantityFormat GERMAN = QuantityFormat.forPeople(Locale.GERMAN);

    @ParameterizedTest
    @CsvSource({
        "VOLT, 4.2, 4.20 V",
        "VOLT, 4.196, 4.20 V",
        "VOLT, 0.336, 0.34 V",
        "VOLT, 0.0084, 8.4 mV",
        "VOLT, 0.0996, 99.6 mV",
        "VOLT, 0.09996, 0.10 V",
        "VOLT, -0.42, −0.42 V",
        "VOLT, 0, 0.00 V",
        "AMPERE, 4.2, 4.20 A",
        "AMPERE, 11.2667, 11.3 A",
        "AMPERE, 0.21, 0.210 A",
        "AMPERE, 0.0042, 4.2 mA",
        "AMPERE, 4.2e-7, 0.42 µA",
        "AMPERE, 0, 0.00 A",
        "WATT, 17.64, 17.6 W",
        "WATT, 38.11, 38.1 W",
        "WATT, 0.4, 0.400 W",
        "WATT, 999.7, 1.00 kW",
        "OHM, 0.3, 0.30 Ω",
        "OHM, 0.03, 30 mΩ",
        "OHM, 0.0125, 12.5 mΩ",
        "OHM, 0.0013, 1.3 mΩ",
        "OHM, 1, 1.00 Ω",
        "OHM, 12.34, 12.3 Ω",
        "OHM, 1e7, 10.0 MΩ",
        "OHM, 0, 0.00 Ω",
        "AMPERE_HOUR, 2.5, 2500 mAh",
        "AMPERE_HOUR, 0.0123, 12.3 mAh",
        "AMPERE_HOUR, 12, 12.0 Ah",
        "AMPERE_HOUR, 0, 0 mAh",
        "WATT_HOUR, 9.25, 9.25 Wh",
        "CELSIUS, 24.6, 25 °C",
        "CELSIUS, -10, −10 °C",
        "CELSIUS, -0.4, 0 °C",
        "KELVIN, 12.5, 12.5 K",
        "METRE, 0.06, 60 mm",
        "METRE, 0.00040386, 0.404 mm",
        "SQUARE_METRE, 0.8231e-6, 0.823 mm²",
        "FRACTION, 0.942, 94 %",
        "FRACTION, 0.0632, 6.3 %",
        "FRACTION, 1, 100 %",
        "FRACTION, 0, 0 %",
        "SECOND, 3, 3 s",
        "SECOND, 12.34, 12.3 s",
        "SECOND, 0.05, 50 ms",
        "SECOND, 59.97, 1 min",
        "SECOND, 125, 2 min 5 s",
        "SECOND, 3599.6, 1 h",
        "SECOND, 4321, 1 h 12 min",
        "SECOND, -125, −2 min 5 s",
        "WATT_PER_SQUARE_METRE, 200e3, 200 mW/mm²",
        "KILOGRAM, 0.046, 46 g",
        "AMPERE_SQUARED_SECOND, 120, 120 A²s",
    })
    void print_inEnglish_isHouseStyle(Unit unit, double value, String expected) {
        assertEquals(expected, ENGLISH.print(value, unit));
    }

    @Test
    void print_inGerman_hasDecimalComma() {
        assertEquals("0,30 Ω", GERMAN.print(0.3, Unit.OHM));
        assertEquals("2500 mAh", GERMAN.print(2.5, Unit.AMPERE_HOUR));
    }

    @Test
    void print_inAscii_hasNoOtherSign() {
        QuantityFormat ascii = QuantityFormat.ascii();
        assertEquals("30 mohm", ascii.print(0.03, Unit.OHM));
        assertEquals("-10 C", ascii.print(-10, Unit.CELSIUS));
        assertEquals("0.42 uA", ascii.print(4.2e-7, Unit.AMPERE));
        assertEquals("-", ascii.print(Double.NaN, Unit.VOLT));
        assertEquals("-inf ohm", ascii.print(Double.NEGATIVE_INFINITY, Unit.OHM));
    }

    @Test
    void print_unknownValue_isDash() {
        assertEquals("—", ENGLISH.print(Double.NaN, Unit.VOLT));
        assertEquals("—", ENGLISH.print(OptionalDouble.empty(), Unit.WATT));
        assertEquals("∞ Ω", ENGLISH.print(Double.POSITIVE_INFINITY, Unit.OHM));
    }

    @Test
    void print_roundsToZero_hasNoSign() {
        Scale volts = Unit.VOLT.base();
        assertEquals("0.00 V", ENGLISH.print(-0.004, volts, Digits.decimals(2)));
        assertEquals("0.00 V", ENGLISH.print(-0.0, Unit.VOLT));
    }

    /** 4.2 V less 4.2 V in a double: not 0.00000000000000089 mV. */
    @Test
    void print_whatCancellingLeavesOver_isZero() {
        assertEquals("0.00 V", ENGLISH.print(4.2 - (4.1 + 0.1), Unit.VOLT));
        assertEquals("0.00 A", ENGLISH.print(-5.33e-15, Unit.AMPERE));
    }

    @Test
    void number_halfWay_roundsAwayFromZero() {
        assertEquals("0.13", ENGLISH.number(0.125, Digits.decimals(2)));
        assertEquals("2.68", ENGLISH.number(2.675, Digits.decimals(2)));
        assertEquals("−0.13", ENGLISH.number(-0.125, Digits.decimals(2)));
    }

    @Test
    void number_extremes_useExponent() {
        assertEquals("1E+300", ENGLISH.number(1e300, Digits.decimals(2)));
        assertEquals("−4.9E-324", ENGLISH.number(-4.9e-324, Digits.all()));
    }
}
