package org.sagwise.reading;

/**
 * What the pack as a whole does.
 *
 * @param givenW power that cells, supplies and chargers give, counted at rest voltage, W
 * @param deliveredW power in coils and resistors, W
 * @param cellHeatW power turned into heat inside cells, W
 * @param pathHeatW power turned into heat in links, switches, fuses and meters, W
 * @param chargingW power that goes into cells being charged, W
 * @param boardHeatW power turned into heat inside regulated boards, W
 * @param supplyHeatW power turned into heat inside supplies, W
 * @param loadCurrentA current through the coils: the common one in series, the sum side by side, A
 */
public record PackReading(
        double givenW,
        double deliveredW,
        double cellHeatW,
        double pathHeatW,
        double chargingW,
        double boardHeatW,
        double supplyHeatW,
        double loadCurrentA) {

    /** Volts lost on the way: path heat for each ampere of the coils' current; NaN without one. */
    public double dropV() {
        return loadCurrentA > 0 ? pathHeatW / loadCurrentA : Double.NaN;
    }

    /** Share of the given power that arrives in coils and resistors; NaN when none is given. */
    public double efficiency() {
        return givenW > 0 ? deliveredW / givenW : Double.NaN;
    }
}
