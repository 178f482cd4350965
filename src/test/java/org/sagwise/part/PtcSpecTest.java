package org.sagwise.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Held against the data sheet of a series of leaded polymer resettable fuses for 16 V at 23 °C: held current, trip
 * current, longest time to trip at five times the held current, highest resistance an hour after tripping, and typical
 * power when tripped. The model is given all but the power, which follows.
 */
class PtcSpecTest {

    private static final double RATED_V = 16;

    /** Where the heat of a voltage across it equals what it loses, °C; by trying, since both sides are smooth. */
    private static double trippedC(PtcSpec ptc, double volts) {
        double low = PtcSpec.SWITCH_C;
        double high = 200;
        while (high - low > 1e-9) {
            double middle = 0.5 * (low + high);
            double heatW = volts * volts / ptc.ohmAt(middle);
            if (heatW > ptc.lossWPerK() * (middle - PtcSpec.RATED_C)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    @ParameterizedTest
    @CsvSource({
        "3, 6, 0.105, 2.0, 2.5",
        "4, 8, 0.060, 3.5, 2.8",
        "5, 10, 0.038, 3.6, 3.0",
        "6, 12, 0.030, 5.8, 3.2",
        "7, 14, 0.023, 8.0, 3.5",
        "8, 16, 0.018, 9.0, 3.5",
        "9, 18, 0.017, 12.0, 3.8",
        "10, 20, 0.014, 12.5, 4.0",
        "11, 22, 0.012, 13.5, 4.0",
        "12, 24, 0.011, 16.0, 4.2",
        "13, 26, 0.009, 25.0, 4.8",
        "14, 28, 0.008, 20.0, 4.8"
    })
    void lossWPerK_trippedAtRatedVolts_takesThePowerOfTheDataSheet(
            double holdA, double tripA, double ohm, double tripS, double sheetW) {
        PtcSpec ptc = new PtcSpec(holdA, tripA, ohm, tripS);
        double hotC = trippedC(ptc, RATED_V);
        double takesW = ptc.lossWPerK() * (hotC - PtcSpec.RATED_C);

        // The highest resistance gives the highest power, the sheet a typical one: 16 % above it at worst (12 A).
        assertEquals(sheetW, takesW, 0.17 * sheetW);
        // Some 125 °C: from memory, no source at hand.
        assertEquals(125, hotC, 10);
    }

    /**
     * How the held current falls in warm air, as a multiple of that at 23 °C: usual of polymer devices, from memory, no
     * source at hand.
     */
    @ParameterizedTest
    @CsvSource({"-40, 1.35, 1.6", "0, 1.1, 1.25", "40, 0.8, 0.9", "50, 0.7, 0.82", "60, 0.6, 0.75", "85, 0.35, 0.5"})
    void leastTripA_inOtherAir_fallsAsUsual(double airC, double least, double most) {
        PtcSpec ptc = new PtcSpec(5, 10, 0.038, 3.6);
        double ratio = ptc.leastTripA(airC) / ptc.leastTripA(PtcSpec.RATED_C);

        assertTrue(ratio >= least && ratio <= most, () -> airC + " °C: " + ratio);
    }

    @Test
    void leastTripA_atRatedAir_liesBetweenHeldAndTripCurrent() {
        assertEquals(Math.sqrt(50), new PtcSpec(5, 10, 0.038, 3.6).leastTripA(PtcSpec.RATED_C), 1e-12);
        assertEquals(0, new PtcSpec(5, 10, 0.038, 3.6).leastTripA(110));
    }

    @Property
    void ohmAt_warmer_neverFalls(
            @ForAll @DoubleRange(min = -50, max = 3000) double warmC, @ForAll @DoubleRange(max = 50) double more) {
        PtcSpec ptc = new PtcSpec(5, 10, 0.038, 3.6);

        assertTrue(ptc.ohmAt(warmC + more) >= ptc.ohmAt(warmC));
        assertTrue(Double.isFinite(ptc.ohmAt(warmC)));
        assertTrue(ptc.ohmAt(warmC) >= 0.038);
    }

    @Test
    void ohmAt_switchTemperature_isTwiceTheColdResistance() {
        PtcSpec ptc = new PtcSpec(5, 10, 0.038, 3.6);

        assertEquals(0.038, ptc.ohmAt(23), 1e-9);
        assertEquals(0.076, ptc.ohmAt(PtcSpec.SWITCH_C), 1e-12);
    }
}
