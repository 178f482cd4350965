package org.sagwise.part;

/**
 * Wire for a coil.
 *
 * @param alloy its metal
 * @param diameterM diameter of one strand (m), above 0
 * @param strands strands wound side by side and joined at both ends, 1 or more
 */
public record CoilWire(Alloy alloy, double diameterM, int strands) {

    public CoilWire {
        Require.positive(diameterM, "diameterM");
        if (strands < 1) {
            throw new IllegalArgumentException("strands must be 1 or more but is " + strands);
        }
    }

    /** Wire of a single strand. */
    public static CoilWire single(Alloy alloy, WireSize size) {
        return new CoilWire(alloy, size.diameterM(), 1);
    }

    /** Cross-section of all strands together (m²). */
    public double areaM2() {
        return strands * WireSize.ofDiameterM(diameterM).areaM2();
    }

    /** Resistance (Ω) of one metre of the wire, all strands side by side, at 20 °C. */
    public double ohmPerM() {
        return alloy.resistivityOhmM() / areaM2();
    }
}
