package org.sagwise.run;

import org.sagwise.part.CellPolarisation;
import org.sagwise.part.Reversal;

/**
 * One cell over one step: the source and the resistance as which it stands in the network while the
 * current of the step is looked for, and its numbers afterwards. Everything in it is the mean over
 * the step.
 */
final class CellStep {

    /** A change of charge this small has the slope of the curve as its mean's derivative. */
    private static final double TINY_CHARGE = 1e-7;

    /** How an empty cell resists: not at all, in proportion to the current, or at its most. */
    private enum Resisting {
        NOT,
        LITTLE,
        FULLY
    }

    private final CellModel cell;

    /** R₀ without guard, Ω. */
    double ohmicOhm;

    /** Both parts of the slow sag. */
    CellPolarisation quick;

    CellPolarisation slow;

    /** Temperature of the cell's own PTC in the middle of the step, °C. */
    private double ptcC;

    private double ptcOhm;
    private Resisting resisting;
    private double depth;
    private double resistingV;
    private double resistingOhm;

    CellStep(CellModel cell) {
        this.cell = cell;
    }

    /** A step begins. */
    void begin(double[] x, int at, double guessA, double seconds) {
        resisting = guessA > 0 ? Resisting.FULLY : Resisting.NOT;
        ptcC = x[at + StateLayout.PTC_C];
        if (hasPtc()) {
            ptcC = ptcAfter(x, at, guessA, 0.5 * seconds);
        }
    }

    private boolean hasPtc() {
        return ptcC != StateLayout.NO_PTC_C;
    }

    /** Temperature of the PTC after some seconds of a current, its heat taken at that of the middle. */
    private double ptcAfter(double[] x, int at, double ampere, double seconds) {
        double heatW = ampere * ampere * cell.ptc.ohmAt(ptcC);
        return cell.ptc.after(x[at + StateLayout.PTC_C], heatW, x[at + StateLayout.CELL_C], seconds);
    }

    /** Takes the PTC to the current just found; how far that moves it, K. */
    double movedPtcK(double[] x, int at, double ampere, double seconds) {
        if (!hasPtc()) {
            return 0;
        }
        double before = ptcC;
        ptcC = ptcAfter(x, at, ampere, 0.5 * seconds);
        return Math.abs(ptcC - before);
    }

    /** By how much a step puts the temperature of the PTC off, as it counts for metal, K. */
    double ptcOffK(double[] x, double[] next, int at, double meanA, double nowA, double endA, double seconds) {
        if (!hasPtc()) {
            return 0;
        }
        double before = nowA * nowA * cell.ptc.ohmAt(x[at + StateLayout.PTC_C]);
        double after = endA * endA * cell.ptc.ohmAt(next[at + StateLayout.PTC_C]);
        double offW = (meanA * meanA * cell.ptc.ohmAt(ptcC) - 0.5 * (before + after)) / 3;
        double perS = cell.ptc.lossWPerK() / cell.ptc.heatCapacityJPerK();
        return HotModel.PTC_CLOSER * offW / cell.ptc.heatCapacityJPerK() * seconds * LossCurve.share(perS * seconds);
    }

    /** Puts the cell into the network as it is on the mean if this current (A) flows. */
    void fill(Wiring wiring, int k, double[] x, int at, double ohmNow, double ambientC, double guessA, double seconds) {
        double charge = x[at + StateLayout.CHARGE];
        double gained = -guessA * seconds / cell.capacityAs;
        double meanV = cell.curve.meanV(charge, charge + gained);
        double bend = Math.abs(gained) > TINY_CHARGE
                ? (cell.curve.voltsAt(charge + gained) - meanV) / gained
                : 0.5 * cell.curve.slope(charge);
        double chargeOhm = bend * seconds / cell.capacityAs;
        double heatW = guessA * (guessA * ohmNow + StateLayout.slowV(x, at));
        double meanC = cell.warmed(x[at + StateLayout.CELL_C], heatW, ambientC, 0.5 * seconds);
        ohmicOhm = cell.ohmicOhm(meanC, charge + 0.5 * gained);
        ptcOhm = cell.ptcOhm(ptcC);
        quick = cell.quick(meanC, charge + 0.5 * gained, guessA);
        slow = cell.slow(meanC, charge + 0.5 * gained, guessA);
        double quickLeft = quick.meanLeft(seconds);
        double slowLeft = slow.meanLeft(seconds);
        double slowV = x[at + StateLayout.QUICK_V] * quickLeft + x[at + StateLayout.SLOW_V] * slowLeft;
        double slowOhm = quick.ohm() * (1 - quickLeft) + slow.ohm() * (1 - slowLeft);
        double volts = meanV + chargeOhm * guessA - slowV;
        double ohms = ohmicOhm + chargeOhm + slowOhm;
        resist(x[at + StateLayout.DEPTH], guessA, charge + gained);
        if (resisting == Resisting.FULLY) {
            holdWithin(guessA, charge + gained, volts, ohms, slowV, slowOhm);
        }
        double left = reversed(0).meanLeft(seconds);
        wiring.cell(
                k,
                volts - x[at + StateLayout.REVERSED_V] * left - resistingV * (1 - left),
                ohms + ptcOhm + cell.guardOhm + resistingOhm * (1 - left));
    }

    /**
     * How the cell resists a current that others drive through it once it is empty: in proportion
     * to a small one, as the plateau has it beyond that. From round to round it goes over to its
     * neighbour only, so that it settles.
     */
    private void resist(double depthBefore, double guessA, double chargeAfter) {
        double least = cell.curve.leastCharge();
        depth = depthBefore + 0.5 * Math.max(0, least - chargeAfter);
        double plateauV = chargeAfter <= least ? Reversal.plateauV(depth) : 0;
        double smallOhm = Reversal.smallCurrentOhm(cell.capacityAh);
        Resisting wanted =
                guessA <= 0 ? Resisting.NOT : smallOhm * guessA < plateauV ? Resisting.LITTLE : Resisting.FULLY;
        resisting = Math.abs(wanted.ordinal() - resisting.ordinal()) > 1 ? Resisting.LITTLE : wanted;
        resistingV = resisting == Resisting.FULLY ? plateauV : 0;
        resistingOhm = resisting == Resisting.LITTLE && plateauV > 0 ? smallOhm : 0;
    }

    /**
     * Two things take a current past the plateau: copper that has grown from one electrode to the
     * other, and at the lowest voltage there is copper that dissolves.
     */
    private void holdWithin(
            double guessA, double chargeAfter, double volts, double ohms, double slowV, double slowOhm) {
        double bridgeOhm = Reversal.bridgeOhm(depth, cell.capacityAh);
        double bridgedV = (bridgeOhm - slowOhm) * guessA - slowV;
        if (chargeAfter <= cell.curve.leastCharge() && bridgedV < resistingV) {
            resistingV = -slowV;
            resistingOhm = bridgeOhm - slowOhm;
        }
        double lowestV = Reversal.LOWEST_V + volts - ohms * guessA;
        if (chargeAfter < 0 && lowestV < resistingV + resistingOhm * guessA) {
            resistingV = Reversal.LOWEST_V + volts;
            resistingOhm = -ohms;
        }
    }

    private static CellPolarisation reversed(double ohm) {
        return new CellPolarisation(ohm, Reversal.TIME_CONSTANT_S);
    }

    /** Takes the cell through a step of this current (A): its numbers and its energy. */
    void advance(double[] next, int at, StateLayout layout, double ampere, double ambientC, double seconds) {
        double charge = next[at + StateLayout.CHARGE];
        double chargeAfter = charge - ampere * seconds / cell.capacityAs;
        double targetV = resistingV + resistingOhm * ampere;
        CellPolarisation reversed = reversed(1);
        double meanSlowV = quick.mean(next[at + StateLayout.QUICK_V], ampere, seconds)
                + slow.mean(next[at + StateLayout.SLOW_V], ampere, seconds)
                + reversed.mean(next[at + StateLayout.REVERSED_V], targetV, seconds);
        double heatW = ampere * (ampere * (ohmicOhm + ptcOhm + cell.guardOhm) + meanSlowV);
        if (hasPtc()) {
            next[at + StateLayout.PTC_C] = ptcAfter(next, at, ampere, seconds);
        }
        next[at + StateLayout.QUICK_V] = quick.after(next[at + StateLayout.QUICK_V], ampere, seconds);
        next[at + StateLayout.SLOW_V] = slow.after(next[at + StateLayout.SLOW_V], ampere, seconds);
        next[at + StateLayout.REVERSED_V] = reversed.after(next[at + StateLayout.REVERSED_V], targetV, seconds);
        if (ampere != 0) {
            double meanV = cell.curve.meanV(chargeAfter, charge);
            next[ampere * meanV > 0 ? layout.givenJ : layout.chargingJ] += Math.abs(ampere * meanV) * seconds;
        }
        double least = cell.curve.leastCharge();
        next[at + StateLayout.DEPTH] += Math.max(0, least - chargeAfter);
        next[at + StateLayout.CHARGE] = Math.max(least, chargeAfter);
        heatW += leakW(next, at, layout, seconds);
        next[layout.cellHeatJ] += heatW * seconds;
        next[at + StateLayout.CELL_C] = cell.warmed(next[at + StateLayout.CELL_C], heatW, ambientC, seconds);
    }

    /** What the copper that bridges the electrodes takes from the charge, W. */
    private double leakW(double[] next, int at, StateLayout layout, double seconds) {
        double bridgeOhm = Reversal.bridgeOhm(next[at + StateLayout.DEPTH], cell.capacityAh);
        double charge = next[at + StateLayout.CHARGE];
        double volts = cell.curve.voltsAt(charge);
        if (volts <= 0 || Double.isInfinite(bridgeOhm)) {
            return 0;
        }
        double leaked = Math.min(volts / bridgeOhm * seconds / cell.capacityAs, charge - cell.curve.leastCharge());
        double joule = leaked * cell.capacityAs * cell.curve.meanV(charge - leaked, charge);
        next[at + StateLayout.CHARGE] = charge - leaked;
        next[layout.givenJ] += joule;
        return joule / seconds;
    }
}
