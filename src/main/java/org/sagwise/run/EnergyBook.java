package org.sagwise.run;

/**
 * Where the energy of a run came from and where it went. Both sides are booked apart: what cells
 * give from their rest voltage and charge, what arrives from currents and ohms.
 *
 * @param givenJ given by cells, supplies and chargers, J
 * @param deliveredJ into coils and resistors, J
 * @param cellHeatJ heat inside cells, J
 * @param pathHeatJ heat in links, switches, fuses and meters, J
 * @param chargingJ into cells and supplies that were charged, J
 * @param boardHeatJ heat inside regulated boards, J
 * @param supplyHeatJ heat inside supplies, J
 */
public record EnergyBook(
        double givenJ,
        double deliveredJ,
        double cellHeatJ,
        double pathHeatJ,
        double chargingJ,
        double boardHeatJ,
        double supplyHeatJ) {

    private static final double J_PER_WH = 3600;

    /** What arrived in coils and resistors, Wh. */
    public double deliveredWh() {
        return deliveredJ / J_PER_WH;
    }

    /** What the sources gave, Wh. */
    public double givenWh() {
        return givenJ / J_PER_WH;
    }

    /** What was given and found nowhere else, J: the error of the account. */
    public double missingJ() {
        return givenJ - deliveredJ - cellHeatJ - pathHeatJ - chargingJ - boardHeatJ - supplyHeatJ;
    }
}
