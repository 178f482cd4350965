package org.sagwise.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sagwise.fixture.Circuits;
import org.sagwise.part.CellPolarisation;
import org.sagwise.part.CellThermal;
import org.sagwise.part.Chemistry;
import org.sagwise.reading.Bench;
import org.sagwise.reading.ResolvedCell;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Press;

/**
 * Runs against the same physics written down as ordinary differential equations and solved by
 * somebody else: Dormand–Prince 8(5,3) of Apache Commons Math with a tolerance of 1e-10.
 */
class IndependentIntegrationTest {

    private static double[] integrate(FirstOrderDifferentialEquations equations, double[] start, double seconds) {
        double[] end = start.clone();
        new DormandPrince853Integrator(1e-9, 1, 1e-10, 1e-10).integrate(equations, 0, start, seconds, end);
        return end;
    }

    /** One cell on one coil: charge, slow sag and temperature, coupled through the current. */
    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.2, 1.0})
    void run_cellOnACoil_agreesWithDormandPrince(double coilOhm) {
        Part part = Circuits.cell("A", 4.1, 30);
        Bench bench = Bench.of(Circuits.single(part, coilOhm), Circuits.NOTHING);
        Stepper stepper = new Stepper(bench, RunSettings.USUAL);
        double seconds = 40 * Math.min(1, 3 * coilOhm);

        CellMoment ours = stepper.advance(stepper.start(), Press.HELD, seconds)
                .state()
                .cells()
                .get(0);
        CellEquations equations = new CellEquations(bench.cells().get("A"), coilOhm);
        double[] end = integrate(equations, equations.start(), seconds);

        assertEquals(end[0], ours.charge(), 1e-5);
        assertEquals(end[2], ours.temperatureC(), 0.05);
        assertEquals(equations.currentA(end) * coilOhm, ours.terminalV(), 1e-3);
    }

    /** d/dt of charge, slow sag and temperature of a cell on a resistance. */
    private record CellEquations(ResolvedCell cell, double coilOhm) implements FirstOrderDifferentialEquations {

        double[] start() {
            return new double[] {cell.start().charge(), 0, cell.start().temperatureC(), 0};
        }

        double ohmic(double[] y) {
            return cell.resistance().ohmAt(y[2], y[0], 1);
        }

        double currentA(double[] y) {
            double emf = cell.spec().restCurve().voltsAt(y[0]) - y[1] - y[3];
            return emf / (ohmic(y) + coilOhm);
        }

        @Override
        public int getDimension() {
            return 4;
        }

        @Override
        public void computeDerivatives(double t, double[] y, double[] dy) {
            double ampere = currentA(y);
            CellThermal thermal = cell.thermal();
            double heatW = ampere * (ampere * ohmic(y) + y[1] + y[3]);
            CellPolarisation quick = cell.resistance().quick(y[2], y[0], 1, ampere);
            CellPolarisation slow = cell.resistance().slow(y[2], y[0], 1, ampere);
            dy[0] = -ampere / (3600 * cell.capacityAh());
            dy[1] = (ampere * quick.ohm() - y[1]) / 33;
            dy[2] = (heatW - thermal.lossWPerK() * (y[2] - 25)) / thermal.heatCapacityJPerK();
            dy[3] = (ampere * slow.ohm() - y[3]) / 223;
        }
    }

    /** A coil whose ohms follow its temperature, on a stiff source. */
    @Test
    void run_nickelCoilWarming_agreesWithDormandPrince() {
        Bench bench = HotCoils.nickelOnSupply();
        Stepper stepper = new Stepper(bench, RunSettings.USUAL);
        var coil = bench.coils().get("coil");
        var thermal = coil.winding().orElseThrow().thermal();

        for (double seconds : new double[] {0.3, 1, 5}) {
            double ours = stepper.advance(stepper.start(), Press.HELD, seconds)
                    .state()
                    .coils()
                    .get(0)
                    .temperatureC();
            double[] end = integrate(
                    new FirstOrderDifferentialEquations() {
                        @Override
                        public int getDimension() {
                            return 1;
                        }

                        @Override
                        public void computeDerivatives(double t, double[] y, double[] dy) {
                            double watt = HotCoils.SUPPLY_V * HotCoils.SUPPLY_V / coil.ohmAt(y[0]);
                            dy[0] = thermal.rateKPerS(watt, y[0], 25);
                        }
                    },
                    new double[] {25},
                    seconds);
            assertEquals(end[0], ours, 3);
        }
    }

    /**
     * The 850 mAh cell of M. Chen and G. A. Rincón-Mora, IEEE Trans. Energy Convers. 21(2), 2006,
     * pp. 504–511 (coefficients as in three independent public implementations): 0.4 A for ten
     * minutes, a rest of five, 0.8 A for five. Its two time constants are stepped by our slow sag,
     * its coefficients held over each second; on the other side they move all the time.
     */
    @Test
    void slowSag_chenAndRinconMoraCell_agreesWithDormandPrince() {
        double[][] phases = {{0.4, 600}, {0, 300}, {0.8, 300}};
        double[] ours = {0.9, 0, 0};
        double[] theirs = {0.9, 0, 0};
        for (double[] phase : phases) {
            double ampere = phase[0];
            for (int second = 0; second < phase[1]; second++) {
                double middle = ours[0] - 0.5 * ampere / ChenRinconMora.CAPACITY_AS;
                ours[1] = ChenRinconMora.fast(middle).after(ours[1], ampere, 1);
                ours[2] = ChenRinconMora.slow(middle).after(ours[2], ampere, 1);
                ours[0] -= ampere / ChenRinconMora.CAPACITY_AS;
            }
            theirs = integrate(ChenRinconMora.equations(ampere), theirs, phase[1]);
            assertEquals(theirs[0], ours[0], 1e-9);
            assertEquals(ChenRinconMora.terminalV(theirs, ampere), ChenRinconMora.terminalV(ours, ampere), 2e-5);
        }
    }

    /** Rest voltages of the same model at some charges, as the published polynomial gives them. */
    @Test
    void chenAndRinconMora_restVoltage_isAsPublished() {
        assertEquals(3.67457, ChenRinconMora.restV(0.1), 1e-5);
        assertEquals(3.80336, ChenRinconMora.restV(0.5), 1e-5);
        assertEquals(4.10290, ChenRinconMora.restV(1.0), 1e-5);
        assertEquals(3.80336, Chemistry.ICR.restCurve().voltsAt(0.5), 2e-3);
    }

    /** Coefficients of the model, and its equations. */
    private static final class ChenRinconMora {

        static final double CAPACITY_AS = 3600 * 0.85;

        private ChenRinconMora() {}

        static double restV(double s) {
            return -1.031 * Math.exp(-35 * s) + 3.685 + 0.2156 * s - 0.1178 * s * s + 0.3201 * s * s * s;
        }

        static double seriesOhm(double s) {
            return 0.1562 * Math.exp(-24.37 * s) + 0.07446;
        }

        static CellPolarisation fast(double s) {
            double ohm = 0.3208 * Math.exp(-29.14 * s) + 0.04669;
            double farad = -752.9 * Math.exp(-13.51 * s) + 703.6;
            return new CellPolarisation(ohm, ohm * farad);
        }

        static CellPolarisation slow(double s) {
            double ohm = 6.603 * Math.exp(-155.2 * s) + 0.04984;
            double farad = -6056 * Math.exp(-27.12 * s) + 4475;
            return new CellPolarisation(ohm, ohm * farad);
        }

        static double terminalV(double[] y, double ampere) {
            return restV(y[0]) - seriesOhm(y[0]) * ampere - y[1] - y[2];
        }

        static FirstOrderDifferentialEquations equations(double ampere) {
            return new FirstOrderDifferentialEquations() {
                @Override
                public int getDimension() {
                    return 3;
                }

                @Override
                public void computeDerivatives(double t, double[] y, double[] dy) {
                    CellPolarisation fast = fast(y[0]);
                    CellPolarisation slow = slow(y[0]);
                    dy[0] = -ampere / CAPACITY_AS;
                    dy[1] = (ampere * fast.ohm() - y[1]) / fast.timeConstantS();
                    dy[2] = (ampere * slow.ohm() - y[2]) / slow.timeConstantS();
                }
            };
        }
    }
}
