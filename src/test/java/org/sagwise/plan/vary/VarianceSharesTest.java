package org.sagwise.plan.vary;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Variance-based indices against functions whose indices are known. */
class VarianceSharesTest {

    private static final double A = 7;
    private static final double B = 0.1;

    private static VarianceShares of(ToDoubleFunction<double[]> model, int inputs, int rows) {
        VarianceShares.Design design = VarianceShares.Design.of(inputs, rows, 1);
        double[] ofA = new double[rows];
        double[] ofB = new double[rows];
        double[][] mixed = new double[inputs][rows];
        for (int row = 0; row < rows; row++) {
            ofA[row] = model.applyAsDouble(design.a()[row]);
            ofB[row] = model.applyAsDouble(design.b()[row]);
            for (int i = 0; i < inputs; i++) {
                mixed[i][row] = model.applyAsDouble(design.mixed(row, i));
            }
        }
        return VarianceShares.of(ofA, ofB, mixed);
    }

    /**
     * T. Ishigami and T. Homma, "An importance quantification technique in uncertainty analysis for
     * computer models", ISUMA 1990, with a = 7 and b = 0.1: sin x1 + a sin² x2 + b x3⁴ sin x1 on
     * (−π, π)³. Its variances by integration (A. Saltelli et al., Global Sensitivity Analysis. The
     * Primer, Wiley 2008, section 4.5; from memory).
     */
    @Test
    void indices_ofIshigamisFunction_areThoseOfItsIntegrals() {
        double pi4 = Math.pow(Math.PI, 4);
        double v1 = 0.5 * Math.pow(1 + B * pi4 / 5, 2);
        double v2 = A * A / 8;
        double v13 = B * B * pi4 * pi4 * (1 / 18.0 - 1 / 50.0);
        double v = v1 + v2 + v13;

        VarianceShares shares = of(
                u -> {
                    double x1 = Math.PI * (2 * u[0] - 1);
                    double x2 = Math.PI * (2 * u[1] - 1);
                    double x3 = Math.PI * (2 * u[2] - 1);
                    return Math.sin(x1) + A * Math.pow(Math.sin(x2), 2) + B * Math.pow(x3, 4) * Math.sin(x1);
                },
                3,
                8192);

        assertEquals(0.3139, v1 / v, 5e-5, "the published figure");
        assertEquals(v1 / v, shares.first()[0], 0.01);
        assertEquals(v2 / v, shares.first()[1], 0.01);
        assertEquals(0, shares.first()[2], 0.01);
        assertEquals((v1 + v13) / v, shares.total()[0], 0.01);
        assertEquals(v2 / v, shares.total()[1], 0.01);
        assertEquals(v13 / v, shares.total()[2], 0.01);
    }

    @Test
    void indices_ofASum_areTheSharesOfItsVariances() {
        VarianceShares shares = of(u -> 3 * u[0] + u[1], 2, 2048);

        assertEquals(0.9, shares.first()[0], 0.005);
        assertEquals(0.1, shares.total()[1], 0.005);
    }

    @Test
    void indices_ofWhatNeverChanges_areNone() {
        VarianceShares shares = of(u -> 4.2, 2, 64);

        assertEquals(0, shares.first()[0]);
        assertEquals(0, shares.total()[1]);
    }
}
