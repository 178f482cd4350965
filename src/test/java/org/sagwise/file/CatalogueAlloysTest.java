package org.sagwise.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.sagwise.part.Alloy;
import org.sagwise.part.CoilWire;
import org.sagwise.part.Gauge;

/** The alloys of the catalogue against the tables they were taken from, and against others. */
class CatalogueAlloysTest {

    private static final double MICRO = 1e-6;

    private static Alloy alloy(String id) {
        return CatalogueLoader.builtIn().alloys().find(id).orElseThrow();
    }

    /** Temperature factors of GB/T 1234 as printed by a wire maker. */
    @ParameterizedTest
    @CsvSource({
        "fecral-13-4, 100, 1.005", "fecral-13-4, 500, 1.064", "fecral-13-4, 1000, 1.150",
        "fecral-25-5, 200, 1.005", "fecral-25-5, 600, 1.030", "fecral-25-5, 1200, 1.047",
        "fecral-21-6-nb, 100, 0.997", "fecral-21-6-nb, 300, 0.994", "fecral-21-6-nb, 1200, 0.99",
        "nicr-80-20, 300, 1.018", "nicr-80-20, 500, 1.026", "nicr-80-20, 800, 1.008",
        "nicr-60-15, 400, 1.052", "nicr-60-15, 800, 1.078", "nicr-60-15, 1100, 1.109"
    })
    void factor_printedTemperature_isThePrintedFactor(String id, double temperatureC, double factor) {
        assertEquals(factor, alloy(id).factor().at(temperatureC), 1e-9);
    }

    /**
     * A second maker's sheet of NiCr 80/20 after rapid cooling: 108, 109, 110, 112, 114, 116 µΩ·cm
     * at 20, 100, 200, 300, 400, 500 °C. Heat treatment makes about 5 % of difference.
     */
    @ParameterizedTest
    @CsvSource({"20, 108", "100, 109", "200, 110", "300, 112", "400, 114", "500, 116"})
    void resistivity_otherMakersSheet_agreesWithinFivePercent(double temperatureC, double uohmCm) {
        double published = uohmCm * 1e-8;

        assertEquals(published, alloy("nicr-80-20").resistivityOhmM(temperatureC), 0.05 * published);
    }

    /**
     * Kuphaldt, Lessons in Electric Circuits, vol. I: 108.1 and 112.2 µΩ·cm for nickel-chromium.
     */
    @ParameterizedTest
    @CsvSource({"nicr-80-20, 1.081", "nicr-60-15, 1.122"})
    void resistivity_textbookTable_agreesWithinOnePercent(String id, double uohmM) {
        assertEquals(uohmM * MICRO, alloy(id).resistivityOhmM(), 0.01 * uohmM * MICRO);
    }

    /**
     * ASTM B603-07, table 1: iron-chromium-aluminium classes by their resistivity, 135–150,
     * 130–144, 119–130 and 111–122 µΩ·cm.
     */
    @ParameterizedTest
    @CsvSource({
        "fecral-21-6-nb, 1.35, 1.50",
        "fecral-25-5, 1.30, 1.44",
        "fecral-23-5, 1.30, 1.44",
        "fecral-13-4, 1.19, 1.30"
    })
    void resistivity_ironAlloy_liesInAClassOfTheStandard(String id, double from, double to) {
        double uohmM = alloy(id).resistivityOhmM() / MICRO;

        assertTrue(uohmM >= from && uohmM <= to, id + " " + uohmM);
    }

    /** ITER Material Properties Handbook, 316L(N), µΩ·cm from 20 to 350 °C. */
    @ParameterizedTest
    @CsvSource({"20, 74.1", "50, 76.2", "100, 79.8", "150, 83.3", "200, 86.9", "250, 90.4", "300, 94.0", "350, 97.5"})
    void resistivity_steel316l_isTheHandbooks(double temperatureC, double uohmCm) {
        assertEquals(uohmCm * 1e-8, alloy("steel-316l").resistivityOhmM(temperatureC), 1e-13);
    }

    /** EN 10088-1: 0.75 µΩ·m for 1.4404 (316L) and 0.73 for 1.4301 (304) at 20 °C. */
    @ParameterizedTest
    @CsvSource({"steel-316l, 0.75", "steel-304, 0.73"})
    void resistivity_steel_agreesWithTheStandardWithinTwoPercent(String id, double uohmM) {
        assertEquals(uohmM * MICRO, alloy(id).resistivityOhmM(), 0.02 * uohmM * MICRO);
    }

    /** Data sheet of 304: 1.16 µΩ·m at 650 °C. */
    @Test
    void resistivity_steel304Hot_isThatOfTheSheet() {
        assertEquals(1.16e-6, alloy("steel-304").resistivityOhmM(650), 1e-11);
    }

    /**
     * Producer's bulletin on nickel 200 and 201, table 3: ohms for a circular-mil foot at degrees
     * Fahrenheit. One Ω·cmil/ft is 1.66243·10⁻⁹ Ω·m.
     */
    @ParameterizedTest
    @CsvSource({
        "70, 58",
        "200, 76",
        "400, 113",
        "600, 164",
        "800, 204",
        "1000, 228",
        "1200, 248",
        "1400, 269",
        "1600, 289",
        "1800, 306"
    })
    void resistivity_nickel200_isTheBulletins(double fahrenheit, double ohmCmilPerFt) {
        double celsius = (fahrenheit - 32) / 1.8;
        double published = ohmCmilPerFt * 1.66243e-9;

        assertEquals(published, alloy("nickel-200").resistivityOhmM(celsius), 0.001 * published);
    }

    /** Nickel at 20 °C is counted back from the bulletin's 70 °F (21.1 °C). */
    @Test
    void resistivity_nickel200AtTwentyDegrees_isALittleLessThanAtSeventyFahrenheit() {
        double at20 = alloy("nickel-200").resistivityOhmM();

        assertTrue(at20 < 0.0964e-6 && at20 > 0.0955e-6, "at 20 °C " + at20);
    }

    /**
     * NiCr 80/20 has 650 Ω for a circular-mil foot (ASTM B344 class): AWG 24 of 404.01 circular
     * mils has 650/404.01 = 1.609 Ω/ft.
     */
    @Test
    void ohmPerM_nichromeAwg24_isTheWireTables() {
        CoilWire wire = CoilWire.single(alloy("nicr-80-20"), new Gauge(24).size());

        assertEquals(1.609 / 0.3048, wire.ohmPerM(), 0.002 * 1.609 / 0.3048);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "fecral-21-6-nb",
                "fecral-25-5",
                "fecral-23-5",
                "fecral-13-4",
                "nicr-80-20",
                "nicr-60-15",
                "steel-316l",
                "steel-304",
                "nickel-200",
                "titanium-1"
            })
    void factor_atReference_isOneAndBelowItStaysAboveZero(String id) {
        assertEquals(1, alloy(id).factor().at(20), 1e-12);
        assertTrue(alloy(id).factor().at(-40) > 0.5);
        assertTrue(alloy(id).meltingC() > alloy(id).factor().highestC());
    }
}
