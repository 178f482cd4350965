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
        double leastV) {}
