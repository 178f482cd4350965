package org.sagwise.run;

import org.sagwise.network.ChargerState;
import org.sagwise.network.ConverterState;

/**
 * Currents and voltages at one moment, by the places of the parts in their model. Its arrays are
 * not changed once it is made.
 */
final class Instant {

    final double[] cellA;
    final double[] cellV;
    final double[] cellOhm;
    final double[] coilA;
    final double[] coilOhm;
    final double[] hotCoilA;
    final double[] wireA;
    final double[] fuseA;
    final double[] chargerA;
    final ChargerState[] chargers;
    final ConverterState[] boards;

    /** Largest current through anything, A. */
    final double largestA;

    /** Whether the network had an answer; the numbers are of no use otherwise. */
    final boolean solved;

    /** Reads the solution that a wiring has just found for the numbers {@code x}. */
    Instant(RunModel model, Wiring wiring, double[] x, double[] ohms, boolean solved) {
        this.solved = solved;
        largestA = wiring.largestA();
        cellOhm = ohms;
        cellA = new double[model.cells.size()];
        cellV = new double[cellA.length];
        for (int k = 0; k < cellA.length; k++) {
            cellA[k] = wiring.cellA(k);
            double charge = x[model.layout.cell(k, StateLayout.CHARGE)];
            double slowV = StateLayout.slowV(x, model.layout.cell(k, 0));
            cellV[k] = model.cells.get(k).curve.voltsAt(charge) - slowV - cellOhm[k] * cellA[k];
        }
        coilA = new double[model.coils.size()];
        coilOhm = new double[coilA.length];
        for (int k = 0; k < coilA.length; k++) {
            coilA[k] = wiring.coilA(k);
            coilOhm[k] = wiring.coilOhm(k);
        }
        hotCoilA = new double[model.hotCoils.size()];
        for (int k = 0; k < hotCoilA.length; k++) {
            hotCoilA[k] = wiring.hotCoilA(k);
        }
        wireA = new double[model.wires.size()];
        for (int k = 0; k < wireA.length; k++) {
            wireA[k] = wiring.wireA(k);
        }
        fuseA = new double[model.fuses.size()];
        for (int k = 0; k < fuseA.length; k++) {
            fuseA[k] = wiring.fuseA(k);
        }
        chargerA = new double[model.chargers.size()];
        chargers = new ChargerState[chargerA.length];
        for (int k = 0; k < chargerA.length; k++) {
            chargerA[k] = wiring.chargerA(k);
            chargers[k] = wiring.chargerState(k).orElse(null);
        }
        boards = new ConverterState[model.boards.size()];
        for (int k = 0; k < boards.length; k++) {
            boards[k] = wiring.boardState(k).orElse(null);
        }
    }
}
