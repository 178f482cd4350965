package org.sagwise.part;

/**
 * Cross-section of a wire's metal.
 *
 * @param areaM2 area (m²), above 0
 */
public record WireSize(double areaM2) {

    private static final double M2_PER_MM2 = 1e-6;

    public WireSize {
        Require.positive(areaM2, "areaM2");
    }

    /** A solid round wire of this diameter (m). */
    public static WireSize ofDiameterM(double diameterM) {
        Require.positive(diameterM, "diameterM");
        return new WireSize(0.25 * Math.PI * diameterM * diameterM);
    }

    /** A solid round wire of this diameter (mm). */
    public static WireSize ofDiameterMm(double diameterMm) {
        return ofDiameterM(diameterMm / 1000);
    }

    /** A wire, solid or stranded, of this metal cross-section (mm²). */
    public static WireSize ofAreaMm2(double areaMm2) {
        return new WireSize(areaMm2 * M2_PER_MM2);
    }

    /** Metal cross-section (mm²). */
    public double areaMm2() {
        return areaM2 / M2_PER_MM2;
    }

    /** Diameter (m) of a solid round wire with this cross-section. */
    public double diameterM() {
        return Math.sqrt(4 * areaM2 / Math.PI);
    }

    /** Diameter (mm) of a solid round wire with this cross-section. */
    public double diameterMm() {
        return diameterM() * 1000;
    }
}
