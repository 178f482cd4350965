package org.sagwise.reading;

/**
 * State of a cell at one moment.
 *
 * @param charge share of its capacity that is left: 0 empty, 1 full; beyond both when abused
 * @param restV rest voltage that belongs to it, V
 * @param polarisationV part of the sag that builds up over seconds, V
 * @param temperatureC temperature, °C
 * @param ptcOhm resistance that its own PTC adds to the cell's because it is warm, Ω; 0 while cool or
 *     without one
 * @param guard what the small board inside a protected cell, or a cell's own interrupter, does
 */
public record CellState(
        double charge, double restV, double polarisationV, double temperatureC, double ptcOhm, Guard guard) {

    /** A cell whose own PTC is cool, or that has none. */
    public CellState(double charge, double restV, double polarisationV, double temperatureC, Guard guard) {
        this(charge, restV, polarisationV, temperatureC, 0, guard);
    }

    /** What the small board inside a protected cell does; a plain cell's is always closed. */
    public enum Guard {
        CLOSED,
        TRIPPED
    }
}
