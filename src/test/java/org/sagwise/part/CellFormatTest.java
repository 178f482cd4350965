package org.sagwise.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class CellFormatTest {

    /** 18 mm across, 65 mm long, 0 for round: common practice, no source. */
    @ParameterizedTest
    @CsvSource({"18650, 18, 65", "18350, 18, 35", "20700, 20, 70", "21700, 21, 70", "26650, 26, 65", "14500, 14, 50"})
    void parse_tradeDesignation_givesDiameterAndLength(String text, int diameter, int length) {
        TradeDesignation designation = TradeDesignation.parse(text).orElseThrow();

        assertEquals(diameter, designation.diameterMm());
        assertEquals(length, designation.lengthMm());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "1865", "18651", "186500", "08650", "18000", "INR18650", "18 650"})
    void parse_anythingElse_isEmpty(String text) {
        assertEquals(Optional.empty(), TradeDesignation.parse(text));
    }

    /** Closed form: π·18·65 + 2·π·9² = 4185 mm². */
    @Test
    void areaM2_18650_isThatOfTheCylinder() {
        assertEquals(4185e-6, CellFormat.F18650.areaM2(), 1e-6);
    }

    @ParameterizedTest
    @EnumSource(CellFormat.class)
    void ofTrade_everyFormat_isFoundByItsTradeName(CellFormat format) {
        assertEquals(Optional.of(format), CellFormat.ofTrade(format.trade()));
    }

    /** Round lithium-ion cells weigh 2.0–2.9 g/cm³ over all: from memory, no source at hand. */
    @ParameterizedTest
    @EnumSource(CellFormat.class)
    void massKg_everyFormat_isThatOfAPlausibleDensity(CellFormat format) {
        double volume = Math.PI / 4 * format.diameterM() * format.diameterM() * format.lengthM();
        double density = format.massKg() / volume;

        assertTrue(density > 2000 && density < 2900, format + " " + density);
    }
}
