package org.sagwise.run;

import java.util.Arrays;

/**
 * Where each quantity of a state stands in its array of numbers. One flat array makes a state cheap
 * to copy and to keep; everybody else asks by name.
 */
final class StateLayout {

    /** Quantities of one cell, one after the other. */
    static final int CHARGE = 0;

    /** The quicker and the slower part of the slow sag, V. */
    static final int QUICK_V = 1;

    static final int SLOW_V = 2;

    /** How far below zero an empty cell is driven, in size, V. */
    static final int REVERSED_V = 3;

    /** What was driven through it after nothing was left, share of its capacity. */
    static final int DEPTH = 4;

    static final int CELL_C = 5;
    static final int PEAK_C = 6;
    static final int PEAK_A = 7;
    static final int LEAST_V = 8;

    /** How long the guard has seen too much current, too low and too high a voltage, s. */
    static final int OVER_CURRENT_S = 9;

    static final int LOW_S = 10;
    static final int HIGH_S = 11;

    /** Temperature of a cell's own PTC that is none, or that has failed, °C. */
    static final double NO_PTC_C = Double.NEGATIVE_INFINITY;

    /** Temperature of a cell's own PTC, °C. */
    static final int PTC_C = 12;

    private static final int PER_CELL = 13;

    /** Quantities of one coil or wire. */
    static final int HOT_C = 0;

    static final int HOT_PEAK_C = 1;
    private static final int PER_HOT = 2;

    /** Shares of the melting heat of one fuse. */
    static final int ELEMENT = 0;

    static final int HOLDER = 1;
    private static final int PER_FUSE = 2;

    private final int hotBegin;
    private final int wireBegin;
    private final int fuseBegin;

    /** Energy given by cells and other sources, J; the rest of the account follows. */
    final int givenJ;

    final int deliveredJ;
    final int cellHeatJ;
    final int pathHeatJ;
    final int chargingJ;
    final int boardHeatJ;
    final int supplyHeatJ;
    final int firedS;
    final int size;

    StateLayout(int cells, int coils, int wires, int fuses) {
        hotBegin = cells * PER_CELL;
        wireBegin = hotBegin + coils * PER_HOT;
        fuseBegin = wireBegin + wires * PER_HOT;
        givenJ = fuseBegin + fuses * PER_FUSE;
        deliveredJ = givenJ + 1;
        cellHeatJ = givenJ + 2;
        pathHeatJ = givenJ + 3;
        chargingJ = givenJ + 4;
        boardHeatJ = givenJ + 5;
        supplyHeatJ = givenJ + 6;
        firedS = givenJ + 7;
        size = givenJ + 8;
    }

    int cell(int cell, int quantity) {
        return cell * PER_CELL + quantity;
    }

    int coil(int coil, int quantity) {
        return hotBegin + coil * PER_HOT + quantity;
    }

    int wire(int wire, int quantity) {
        return wireBegin + wire * PER_HOT + quantity;
    }

    int fuse(int fuse, int quantity) {
        return fuseBegin + fuse * PER_FUSE + quantity;
    }

    /** All of the sag that builds up and fades with time, of the cell that begins at {@code at}, V. */
    static double slowV(double[] x, int at) {
        return x[at + QUICK_V] + x[at + SLOW_V] + x[at + REVERSED_V];
    }

    /** The numbers of a bench that has just been laid out. */
    static double[] start(RunModel model) {
        StateLayout layout = model.layout;
        double[] x = new double[layout.size];
        Arrays.fill(x, 0);
        for (int k = 0; k < model.cells.size(); k++) {
            var start = model.cells.get(k).cell.start();
            x[layout.cell(k, CHARGE)] = start.charge();
            x[layout.cell(k, QUICK_V)] = start.polarisationV();
            // Below zero no voltage belongs to a charge: it is what fades when nobody drives the cell.
            x[layout.cell(k, REVERSED_V)] = Math.max(0, -start.restV());
            x[layout.cell(k, CELL_C)] = start.temperatureC();
            x[layout.cell(k, PEAK_C)] = start.temperatureC();
            x[layout.cell(k, LEAST_V)] = start.restV();
            x[layout.cell(k, PTC_C)] = model.cells.get(k).ptc == null ? NO_PTC_C : start.temperatureC();
        }
        for (int k = 0; k < model.hotCoils.size(); k++) {
            x[layout.coil(k, HOT_C)] = model.ambientC;
            x[layout.coil(k, HOT_PEAK_C)] = model.ambientC;
        }
        for (int k = 0; k < model.wires.size(); k++) {
            x[layout.wire(k, HOT_C)] = model.ambientC;
            x[layout.wire(k, HOT_PEAK_C)] = model.ambientC;
        }
        return x;
    }
}
