package org.sagwise.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class RestVoltageCurveTest {

    /** The curves pass through the published rows; only rounding lies between. */
    private static final double PUBLISHED_V = 1e-9;

    /** 2.8 Ah INR 21700 and NMC 18650 differ from the curve taken for INR by up to this much. */
    private static final double OTHER_CELL_V = 0.06;

    @ParameterizedTest
    @MethodSource("org.sagwise.part.PublishedRestVoltages#rows")
    void voltsAt_publishedCharge_isThePublishedVoltage(Chemistry chemistry, double charge, double volts) {
        assertEquals(volts, chemistry.restCurve().voltsAt(charge), PUBLISHED_V);
    }

    /**
     * Rows that no curve was made from: a high-power INR 21700 of about 4.2 Ah, same open data as
     * the INR 18650 (Sunil, Pattipati, Balasingam, 2025).
     */
    @ParameterizedTest
    @CsvSource({
        "0.05, 3.1693", "0.10, 3.3344", "0.20, 3.4746", "0.30, 3.5811", "0.40, 3.6560",
        "0.50, 3.7418", "0.60, 3.8439", "0.70, 3.9263", "0.80, 4.0340", "0.90, 4.0798",
        "0.95, 4.1011", "1.00, 4.1932"
    })
    void voltsAt_anotherCellOfTheSameKind_isNear(double charge, double volts) {
        assertEquals(volts, Chemistry.INR.restCurve().voltsAt(charge), OTHER_CELL_V);
    }

    /**
     * Points between the knots of the IFR curve: corners of the published piecewise-linear
     * approximation of the same cell (Sunil, Pattipati, Balasingam, 2025, as printed).
     */
    @ParameterizedTest
    @CsvSource({"0.0534, 3.0872, 0.01", "0.0885, 3.1942, 0.02", "0.2972, 3.2772, 0.005"})
    void voltsAt_betweenKnots_followsThePublishedCorners(double charge, double volts, double toleranceV) {
        assertEquals(volts, Chemistry.IFR.restCurve().voltsAt(charge), toleranceV);
    }

    /**
     * Chen, Rincón-Mora, IEEE Trans. Energy Convers. 21(2), 2006: values of the printed formula,
     * computed apart.
     */
    @ParameterizedTest
    @CsvSource({"0.05, 3.51636", "0.1, 3.67457", "0.2, 3.72503", "0.5, 3.80336"})
    void voltsAt_cobaltCellUpToHalfCharge_followsTheFormula(double charge, double volts) {
        assertEquals(volts, Chemistry.ICR.restCurve().voltsAt(charge), 1e-5);
    }

    /**
     * The formula ends at 4.1029 V (3.94598 V at 80 %), a cell charged to 4.20 V rests near that.
     * What it lacks is made up over the upper half and not at its very end: 4.07 V at 90 % and 3.98 V
     * at 80 % are what such cells rest at (from memory).
     */
    @ParameterizedTest
    @CsvSource({"0.8, 3.98", "0.9, 4.07"})
    void voltsAt_cobaltCellNearlyFull_restsAsSuchCellsDo(double charge, double volts) {
        assertEquals(volts, Chemistry.ICR.restCurve().voltsAt(charge), 0.02);
    }

    @ParameterizedTest
    @EnumSource(Chemistry.class)
    void voltsAt_full_isWhereAFullCellRests(Chemistry chemistry) {
        assertEquals(chemistry.restedFullV(), chemistry.restCurve().voltsAt(1.0));
        assertEquals(1.0, chemistry.restCurve().chargeAt(chemistry.restedFullV()));
    }

    /**
     * The published corners of an LFP 18650 are 3.3511 V at 98.3 % and, while it is still being
     * charged, 3.4180 V at 99.5 % (Sunil, Pattipati, Balasingam, 2025, as printed): rested it lies
     * between, and its charge ends far above.
     */
    @Test
    void voltsAt_fullLfpCell_restsFarBelowTheEndOfItsCharge() {
        assertEquals(3.65, Chemistry.IFR.fullV());
        assertTrue(Chemistry.IFR.restedFullV() > 3.3511 && Chemistry.IFR.restedFullV() < 3.4180);
        assertEquals(4.20, Chemistry.INR.restedFullV());
    }

    @ParameterizedTest
    @EnumSource(Chemistry.class)
    void voltsAt_beyondEmptyAndFull_runsOnAsStated(Chemistry chemistry) {
        RestVoltageCurve curve = chemistry.restCurve();

        assertEquals(0, curve.voltsAt(-0.05), 1e-12);
        assertEquals(0, curve.voltsAt(-0.12), 1e-12);
        assertEquals(-0.05, curve.chargeAt(-1), 1e-12);
        assertEquals(0, curve.meanV(-3, -0.05), 1e-12);
        assertEquals(5, curve.voltsAt(1.5), 1e-12);
        assertTrue(curve.voltsAt(3) > 6);
    }

    @Test
    void meanV_straightLines_isTheMeanOfTheEnds() {
        RestVoltageCurve line = RestVoltageCurve.through(new double[] {-1, 0.25, 2}, new double[] {2.0, 3.25, 5.0});

        assertEquals(3.5, line.meanV(), 1e-12);
    }

    @Test
    void meanV_inr_agreesWithATrapezoidSum() {
        RestVoltageCurve curve = Chemistry.INR.restCurve();
        int steps = 100_000;
        double sum = 0.5 * (curve.voltsAt(0) + curve.voltsAt(1));
        for (int i = 1; i < steps; i++) {
            sum += curve.voltsAt((double) i / steps);
        }

        assertEquals(sum / steps, curve.meanV(), 1e-8);
    }

    @ParameterizedTest
    @CsvSource({"4.35", "4.10", "3.90", "4.20"})
    void withFull_otherEndOfCharge_passesThroughItAndLeavesTheLowerHalf(double fullV) {
        RestVoltageCurve usual = Chemistry.INR.restCurve();
        RestVoltageCurve other = usual.withFull(fullV);

        assertEquals(fullV, other.voltsAt(1));
        assertEquals(usual.voltsAt(0.1), other.voltsAt(0.1));
        assertEquals(usual.voltsAt(0.5), other.voltsAt(0.5));
        assertEquals(0.7, other.chargeAt(other.voltsAt(0.7)), 1e-12);
    }

    /** A cell of another make: everything above 0 V shrinks to a third. */
    @Test
    void withFull_farBelowItsKind_shrinksInProportion() {
        RestVoltageCurve usual = Chemistry.INR.restCurve();
        RestVoltageCurve other = usual.withFull(1.4);

        assertEquals(1.4, other.voltsAt(1));
        assertEquals(usual.voltsAt(0.3) / 3, other.voltsAt(0.3), 1e-12);
        assertEquals(0, other.voltsAt(-0.05), 1e-12);
    }

    @Test
    void withFull_noVoltage_isRefused() {
        RestVoltageCurve curve = Chemistry.INR.restCurve();

        assertThrows(IllegalArgumentException.class, () -> curve.withFull(0));
        assertThrows(IllegalArgumentException.class, () -> curve.withFull(Double.NaN));
    }

    @Test
    void through_pointsThatDoNotRise_areRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> RestVoltageCurve.through(new double[] {0, 1, 2}, new double[] {3, 3, 4}));
        assertThrows(
                IllegalArgumentException.class,
                () -> RestVoltageCurve.through(new double[] {0, 0, 2}, new double[] {3, 3.5, 4}));
        assertThrows(
                IllegalArgumentException.class,
                () -> RestVoltageCurve.through(new double[] {0, 1}, new double[] {3, 4}));
    }

    @Test
    void meanV_overSeveralPoints_isTheIntegralOverTheWidth() {
        RestVoltageCurve curve = Chemistry.INR.restCurve();
        double sum = 0;
        int pieces = 40_000;
        double from = -0.1;
        double to = 1.2;
        for (int i = 0; i < pieces; i++) {
            sum += curve.voltsAt(from + (to - from) * (i + 0.5) / pieces);
        }
        assertEquals(sum / pieces, curve.meanV(from, to), 1e-6);
        assertEquals(curve.meanV(from, to), curve.meanV(to, from), 0);
        assertEquals(curve.meanV(), curve.meanV(0, 1), 1e-12);
    }

    @Test
    void meanV_ofNoWidth_isTheVoltageThere() {
        RestVoltageCurve curve = Chemistry.INR.restCurve();
        assertEquals(curve.voltsAt(0.37), curve.meanV(0.37, 0.37), 1e-15);
    }
}
