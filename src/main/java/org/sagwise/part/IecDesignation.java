package org.sagwise.part;

/**
 * The designation of a round cell under IEC 61960: {@code I} for lithium-ion, a letter for the
 * metal of the positive electrode, {@code R} for round, then the greatest diameter and the greatest
 * height in millimetres, each rounded up to the next whole number: {@code INR19/66}.
 *
 * <p>So the trade's "18650" and the standard's "19/66" are the same cell.
 *
 * @param metalLetter letter of the metal
 * @param diameterMm greatest diameter, rounded up (mm)
 * @param heightMm greatest height, rounded up (mm)
 */
public record IecDesignation(char metalLetter, int diameterMm, int heightMm) {

    /**
     * The designation of a round cell.
     *
     * @param greatestDiameterMm greatest diameter with tolerance and sleeve (mm), 1 or more
     * @param greatestHeightMm greatest height (mm), 1 or more
     */
    public static IecDesignation ofRoundCell(Chemistry chemistry, double greatestDiameterMm, double greatestHeightMm) {
        if (!(greatestDiameterMm >= 1 && greatestHeightMm >= 1)) {
            throw new IllegalArgumentException("sizes must be 1 mm or more");
        }
        return new IecDesignation(
                chemistry.metalLetter(), (int) Math.ceil(greatestDiameterMm), (int) Math.ceil(greatestHeightMm));
    }

    /** As printed on the cell. */
    @Override
    public String toString() {
        return "I" + metalLetter + "R" + diameterMm + "/" + heightMm;
    }
}
