package org.sagwise.reading;

/**
 * What a person could measure at one cell. Current is positive when the cell discharges and
 * negative when current is pushed into it; NaN where it cannot be told.
 *
 * @param id id of the part
 * @param restV rest voltage, V
 * @param terminalV voltage between its terminals, V
 * @param sagV rest voltage minus terminal voltage, V
 * @param currentA current, A
 * @param limitA continuous discharge limit, A
 * @param internalOhm internal resistance at this moment, Ω
 * @param heatW power turned into heat inside, W
 */
public record CellReading(
        String id,
        double restV,
        double terminalV,
        double sagV,
        double currentA,
        double limitA,
        double internalOhm,
        double heatW) {

    /** Size of the current as a share of the discharge limit: 1 is at the limit. */
    public double loadFraction() {
        return Math.abs(currentA) / limitA;
    }
}
