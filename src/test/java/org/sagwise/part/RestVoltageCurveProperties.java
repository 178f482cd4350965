package org.sagwise.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class RestVoltageCurveProperties {

    @Property
    void voltsAt_moreCharge_moreVolts(
            @ForAll Chemistry chemistry,
            @ForAll @DoubleRange(min = -0.05, max = 3) @Scale(10) double charge,
            @ForAll @DoubleRange(min = 1e-9, max = 1) @Scale(10) double more) {
        RestVoltageCurve curve = chemistry.restCurve();

        assertTrue(curve.voltsAt(charge + more) > curve.voltsAt(charge));
    }

    /** Where nothing is left a cell holds nothing, however far it is driven. */
    @Property
    void voltsAt_belowTheLeastCharge_isLevel(
            @ForAll Chemistry chemistry, @ForAll @DoubleRange(min = -5, max = -0.05) @Scale(10) double charge) {
        RestVoltageCurve curve = chemistry.restCurve();

        assertEquals(0, curve.voltsAt(charge));
        assertEquals(curve.leastCharge(), curve.chargeAt(curve.voltsAt(charge)));
    }

    @Property(tries = 5000)
    void chargeAt_voltsOfACharge_isThatCharge(
            @ForAll Chemistry chemistry, @ForAll @DoubleRange(min = 0, max = 1) @Scale(10) double charge) {
        RestVoltageCurve curve = chemistry.restCurve();

        assertEquals(charge, curve.chargeAt(curve.voltsAt(charge)), 1e-12);
    }

    @Property(tries = 5000)
    void voltsAt_chargeOfAVoltage_isThatVoltage(
            @ForAll Chemistry chemistry, @ForAll @DoubleRange(min = 0, max = 6) @Scale(10) double volts) {
        RestVoltageCurve curve = chemistry.restCurve();

        assertEquals(volts, curve.voltsAt(curve.chargeAt(volts)), 1e-13);
    }

    @Property
    void slope_anywhere_isTheSmallDifferenceOfVolts(
            @ForAll Chemistry chemistry, @ForAll @DoubleRange(min = -0.0499, max = 2) @Scale(10) double charge) {
        RestVoltageCurve curve = chemistry.restCurve();
        double step = 1e-6;
        double difference = (curve.voltsAt(charge + step) - curve.voltsAt(charge - step)) / (2 * step);

        assertTrue(curve.slope(charge) > 0);
        assertEquals(difference, curve.slope(charge), 0.02 + 0.02 * difference);
    }

    @Property
    void withFull_anyVoltageAFileMayGive_keepsRisingAndInvertible(
            @ForAll Chemistry chemistry,
            @ForAll @DoubleRange(min = 1e-3, max = 6) @Scale(10) double fullV,
            @ForAll @DoubleRange(min = 0, max = 1) @Scale(10) double charge,
            @ForAll @DoubleRange(min = 0, max = 6) @Scale(10) double volts) {
        RestVoltageCurve curve = chemistry.restCurve().withFull(fullV);

        assertEquals(fullV, curve.voltsAt(1));
        assertEquals(charge, curve.chargeAt(curve.voltsAt(charge)), 1e-9);
        assertEquals(volts, curve.voltsAt(curve.chargeAt(volts)), 1e-12);
    }
}
