package org.sagwise.plan.pack;

import org.sagwise.reading.CellReading;
import org.sagwise.reading.CoilReading;
import org.sagwise.reading.Readings;

/**
 * A pack at one moment with the button held.
 *
 * @param coilW power in the coil (W)
 * @param packA current of the whole pack (A)
 * @param cellA current of the cell that bears the largest share of its limit (A)
 * @param share that share; NaN where no limit is known
 * @param sagV largest sag of a cell (V)
 * @param cellHeatW most heat in one cell (W)
 * @param jointHeatW heat in joints, wires, fuse and button together (W)
 */
public record PackMoment(
        double coilW, double packA, double cellA, double share, double sagV, double cellHeatW, double jointHeatW) {

    /** What readings say of a pack of so many cells in a row. */
    static PackMoment of(Readings readings, int rows) {
        double coilW =
                readings.coils().stream().mapToDouble(CoilReading::powerW).sum();
        double packA = readings.cells().stream()
                        .mapToDouble(cell -> Math.abs(cell.currentA()))
                        .sum()
                / rows;
        double cellA = 0;
        double share = Double.NaN;
        double sagV = 0;
        double heatW = 0;
        for (CellReading cell : readings.cells()) {
            double load = cell.loadFraction();
            if (Double.isNaN(share) ? !Double.isNaN(load) || Math.abs(cell.currentA()) > cellA : load > share) {
                share = load;
                cellA = Math.abs(cell.currentA());
            }
            sagV = Math.max(sagV, cell.sagV());
            heatW = Math.max(heatW, cell.heatW());
        }
        return new PackMoment(
                coilW, packA, cellA, share, sagV, heatW, readings.pack().pathHeatW());
    }
}
