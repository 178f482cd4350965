package org.sagwise.run;

/**
 * A cell at one moment of a run. Current is positive when it discharges.
 *
 * @param id id of the cell
 * @param charge share of its capacity that is left; beyond 0 and 1 when abused
 * @param restV rest voltage that belongs to its charge, V
 * @param terminalV voltage at its terminals, V; inside its guard where that has opened
 * @param currentA current, A
 * @param temperatureC temperature, °C
 * @param peakC highest temperature so far, °C
 * @param peakA largest size of its current so far, A
 * @param leastV lowest voltage at its terminals so far, V
 */
public record CellMoment(
        String id,
        double charge,
        double restV,
        double terminalV,
        double currentA,
        double temperatureC,
        double peakC,
        double peakA,
        double leastV) {

    /**
     * Share of the capacity an hour (1/h) from which on the current of a real cell breaks down
     * within seconds, because the charge inside cannot move up fast enough: teaching value, above
     * what any high-drain cell is rated for.
     */
    private static final double LASTING_RATE = 15;

    /**
     * Whether its largest current so far is one that a real cell does not keep up, while this model
     * does: a moment's value at best.
     *
     * @param capacityAh its capacity, Ah
     */
    public boolean isPeakOfAMoment(double capacityAh) {
        return isOfAMoment(peakA, capacityAh);
    }

    /** The same of any current, A. */
    public static boolean isOfAMoment(double currentA, double capacityAh) {
        return Math.abs(currentA) > LASTING_RATE * capacityAh;
    }
}
