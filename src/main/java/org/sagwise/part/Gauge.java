package org.sagwise.part;

/**
 * American wire gauge of a solid round wire: ASTM B258 fixes 0.005 in for AWG 36 and 0.46 in for
 * AWG 4/0, with equal ratios for the 39 steps between, so d = 0.127 mm · 92^((36 − n)/39).
 *
 * @param number gauge number, −3 (which is written 4/0) to 50
 */
public record Gauge(int number) {

    /** Thickest gauge, written 4/0. */
    public static final int THICKEST = -3;

    /** Thinnest gauge of this program. */
    public static final int THINNEST = 50;

    private static final double AWG_36_M = 0.127e-3;
    private static final int ANCHOR = 36;
    private static final double SPAN = 92;
    private static final double STEPS = 39;

    public Gauge {
        if (number < THICKEST || number > THINNEST) {
            throw new IllegalArgumentException(
                    "AWG must lie within " + THICKEST + " and " + THINNEST + " but is " + number);
        }
    }

    /** The gauge nearest to this diameter (m), by ratio. */
    public static Gauge nearest(double diameterM) {
        long rounded = Math.round(numberAt(diameterM));
        return new Gauge((int) Math.max(THICKEST, Math.min(THINNEST, rounded)));
    }

    /** Gauge number, broken where the wire lies between two, that belongs to a diameter (m). */
    public static double numberAt(double diameterM) {
        Require.positive(diameterM, "diameterM");
        return ANCHOR - STEPS * Math.log(diameterM / AWG_36_M) / Math.log(SPAN);
    }

    /** Diameter (m). */
    public double diameterM() {
        return AWG_36_M * Math.pow(SPAN, (ANCHOR - number) / STEPS);
    }

    /** Diameter and cross-section. */
    public WireSize size() {
        return WireSize.ofDiameterM(diameterM());
    }

    /** The number as the trade writes it: {@code 18}, {@code 1/0}, {@code 4/0}. */
    public String label() {
        return number > 0 ? Integer.toString(number) : (1 - number) + "/0";
    }
}
