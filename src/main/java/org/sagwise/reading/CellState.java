package org.sagwise.reading;

/**
 * State of a cell at one moment.
 *
 * @param charge share of its capacity that is left: 0 empty, 1 full; beyond both when abused
 * @param restV rest voltage that belongs to it, V
 * @param polarisationV part of the sag that builds up over seconds, V
 * @param temperatureC temperature, °C
 * @param guard what the small board inside a protected cell does
 */
public record CellState(double charge, double restV, double polarisationV, double temperatureC, Guard guard) {

    /** What the small board inside a protected cell does; a plain cell's is always closed. */
    public enum Guard {
        CLOSED,
        TRIPPED
    }
}
