package org.sagwise.run;

import org.sagwise.part.FuseMelting;

/**
 * One step in time.
 *
 * <p>Currents are taken as constant over the step, at the value with which the mean of every
 * voltage over the step obeys Kirchhoff's laws. For a constant current the slow sag and the warming
 * of a cell have closed forms, and the mean rest voltage between two charges is exact, so that what
 * the cells give is what arrives elsewhere. The mean rest voltage depends on the current; it is
 * linearised, which puts a resistance in series with each cell, and one or two solutions settle it.
 * That makes the step implicit, of second order, and stable for any length (the mean voltage is the
 * discrete gradient of O. Gonzalez, "Time integration and discrete Hamiltonian systems", J.
 * Nonlinear Sci. 6, 1996).
 *
 * <p>How far the current bends within the step is seen from the currents at both its ends, and
 * gives the error estimate.
 */
final class Integrator {

    /** Most solutions that are spent on settling one step. */
    private static final int MOST_ROUNDS = 6;

    /** Change of charge between two rounds at which the mean voltages are settled. */
    private static final double SETTLED_CHARGE = 3e-5;

    /** Change of a coil's mean temperature between two rounds at which it is settled, K. */
    private static final double SETTLED_K = 0.2;

    private final RunModel model;
    private final StateLayout layout;
    private final double[] guessA;
    private final CellStep[] steps;
    private final double[] middleC;
    private final double[] hotW;

    Integrator(RunModel model) {
        this.model = model;
        layout = model.layout;
        guessA = new double[model.cells.size()];
        steps = model.cells.stream().map(CellStep::new).toArray(CellStep[]::new);
        middleC = new double[model.hotCoils.size() + model.wires.size()];
        hotW = new double[middleC.length];
    }

    /** Currents at the moment with the numbers {@code x}. */
    Instant instant(Wiring wiring, double[] x) {
        double[] ohms = new double[model.cells.size()];
        for (int k = 0; k < ohms.length; k++) {
            CellModel cell = model.cells.get(k);
            double charge = x[layout.cell(k, StateLayout.CHARGE)];
            ohms[k] = cell.ohmicOhm(x[layout.cell(k, StateLayout.CELL_C)], charge)
                    + cell.guardOhm
                    + cell.ptcOhm(x[layout.cell(k, StateLayout.PTC_C)]);
            wiring.cell(k, cell.curve.voltsAt(charge) - StateLayout.slowV(x, layout.cell(k, 0)), ohms[k]);
        }
        for (int k = 0; k < model.hotCoils.size(); k++) {
            wiring.hotCoil(k, model.hotCoils.get(k).ohm(x[layout.coil(k, StateLayout.HOT_C)]));
        }
        for (int k = 0; k < model.wires.size(); k++) {
            wiring.wire(k, model.wires.get(k).ohm(x[layout.wire(k, StateLayout.HOT_C)]));
        }
        boolean solved = wiring.solve();
        return new Instant(model, wiring, x, ohms, solved);
    }

    /**
     * A step of this length.
     *
     * @param x numbers at its start; left as they are
     * @param now currents at its start
     * @param seconds length, above 0
     */
    Trial step(Wiring wiring, double[] x, Instant now, double seconds) {
        System.arraycopy(now.cellA, 0, guessA, 0, guessA.length);
        boolean solved = true;
        for (int k = 0; k < steps.length; k++) {
            steps[k].begin(x, layout.cell(k, 0), guessA[k], seconds);
        }
        guessHeat(x, now, seconds);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            fillMeans(wiring, x, now, seconds);
            solved = wiring.solve();
            if (!solved || settled(wiring, x, seconds)) {
                break;
            }
        }
        double[] next = x.clone();
        StepError error = new StepError();
        for (int k = 0; k < guessA.length; k++) {
            guessA[k] = wiring.cellA(k);
            steps[k].advance(next, layout.cell(k, 0), layout, guessA[k], model.ambientC, seconds);
            GuardTimer.count(model.cells.get(k), next, layout.cell(k, 0), guessA[k], seconds);
        }
        advanceHot(next, wiring, seconds);
        wiring.book(next, seconds);
        double[] meanA = guessA.clone();
        Instant end = instant(wiring, next);
        for (int k = 0; k < meanA.length; k++) {
            error.cell(model.cells.get(k), next, layout, k, meanA[k], now, end, seconds, steps[k]);
            double ptcK = steps[k].ptcOffK(x, next, layout.cell(k, 0), meanA[k], now.cellA[k], end.cellA[k], seconds);
            error.hot(ptcK, end.cellA[k]);
        }
        errorOfHot(error, x, next, now, end, seconds);
        note(next, end);
        return new Trial(next, end, error.worst(), solved && end.solved);
    }

    private void guessHeat(double[] x, Instant now, double seconds) {
        for (int k = 0; k < middleC.length; k++) {
            middleC[k] = warmedBy(k, x, hotA(now, k), hotC(x, k), 0.5 * seconds);
        }
    }

    private HotModel hot(int k) {
        int coils = model.hotCoils.size();
        return k < coils ? model.hotCoils.get(k) : model.wires.get(k - coils);
    }

    private double hotA(Instant instant, int k) {
        int coils = model.hotCoils.size();
        return k < coils ? instant.hotCoilA[k] : instant.wireA[k - coils];
    }

    private int hotSlot(int k, int quantity) {
        int coils = model.hotCoils.size();
        return k < coils ? layout.coil(k, quantity) : layout.wire(k - coils, quantity);
    }

    private double hotC(double[] x, int k) {
        return x[hotSlot(k, StateLayout.HOT_C)];
    }

    /** Temperature after some seconds of a current, its heat taken at the temperature given. */
    private double warmedBy(int k, double[] x, double ampere, double atC, double seconds) {
        HotModel hot = hot(k);
        return hot.warmed(hotC(x, k), hot.heatW(ampere, atC), seconds);
    }

    private void fillMeans(Wiring wiring, double[] x, Instant now, double seconds) {
        for (int k = 0; k < steps.length; k++) {
            steps[k].fill(wiring, k, x, layout.cell(k, 0), now.cellOhm[k], model.ambientC, guessA[k], seconds);
        }
        int coils = model.hotCoils.size();
        for (int k = 0; k < middleC.length; k++) {
            if (k < coils) {
                wiring.hotCoil(k, hot(k).ohm(middleC[k]));
            } else {
                wiring.wire(k - coils, hot(k).ohm(middleC[k]));
            }
        }
    }

    /** Takes the currents just found as the next guess; true if they hardly differ from it. */
    private boolean settled(Wiring wiring, double[] x, double seconds) {
        boolean settled = true;
        for (int k = 0; k < guessA.length; k++) {
            double ampere = wiring.cellA(k);
            double moved = Math.abs(ampere - guessA[k]) * seconds / model.cells.get(k).capacityAs;
            settled &= moved < SETTLED_CHARGE;
            guessA[k] = ampere;
            double ptcK = steps[k].movedPtcK(x, layout.cell(k, 0), ampere, seconds);
            settled &= HotModel.PTC_CLOSER * ptcK < SETTLED_K;
        }
        int coils = model.hotCoils.size();
        for (int k = 0; k < middleC.length; k++) {
            double ampere = k < coils ? wiring.hotCoilA(k) : wiring.wireA(k - coils);
            double middle = warmedBy(k, x, ampere, middleC[k], 0.5 * seconds);
            settled &= hot(k).closer() * Math.abs(middle - middleC[k]) < SETTLED_K;
            middleC[k] = middle;
        }
        return settled;
    }

    private void advanceHot(double[] next, Wiring wiring, double seconds) {
        int coils = model.hotCoils.size();
        for (int k = 0; k < middleC.length; k++) {
            double ampere = k < coils ? wiring.hotCoilA(k) : wiring.wireA(k - coils);
            hotW[k] = hot(k).heatW(ampere, middleC[k]);
            next[hotSlot(k, StateLayout.HOT_C)] = hot(k).warmed(hotC(next, k), hotW[k], seconds);
        }
        for (int k = 0; k < model.fuses.size(); k++) {
            FuseMelting fuse = model.fuses.get(k).melting();
            int element = layout.fuse(k, StateLayout.ELEMENT);
            int holder = layout.fuse(k, StateLayout.HOLDER);
            next[element] = fuse.element(next[element], wiring.fuseA(k), seconds);
            next[holder] = fuse.holder(next[holder], wiring.fuseA(k), seconds);
        }
    }

    /**
     * The power of a step was taken at its middle: how far it lies from the chord of the powers at
     * both ends is three times how far it lies from its mean.
     */
    private void errorOfHot(StepError error, double[] x, double[] next, Instant now, Instant end, double seconds) {
        for (int k = 0; k < middleC.length; k++) {
            HotModel hot = hot(k);
            double before = hot.heatW(hotA(now, k), hotC(x, k));
            double after = hot.heatW(hotA(end, k), hotC(next, k));
            double offW = (hotW[k] - 0.5 * (before + after)) / 3;
            error.hot(hot.offK(offW, middleC[k], seconds), hotA(end, k));
        }
    }

    /** Notes the greatest and least of what a moment shows in its own numbers. */
    void note(double[] x, Instant now) {
        for (int k = 0; k < guessA.length; k++) {
            int at = layout.cell(k, 0);
            raise(x, at + StateLayout.PEAK_C, x[at + StateLayout.CELL_C]);
            raise(x, at + StateLayout.PEAK_A, Math.abs(now.cellA[k]));
            x[at + StateLayout.LEAST_V] = Math.min(x[at + StateLayout.LEAST_V], now.cellV[k]);
        }
        for (int k = 0; k < middleC.length; k++) {
            raise(x, hotSlot(k, StateLayout.HOT_PEAK_C), hotC(x, k));
        }
    }

    private static void raise(double[] x, int slot, double value) {
        x[slot] = Math.max(x[slot], value);
    }
}
