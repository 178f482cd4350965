package org.sagwise.part;

import java.util.Arrays;

/** What copper wire stands: a guide for steady current, and when it melts. */
public final class WireLimits {

    /**
     * Thinnest to thickest. AWG 32 to 22: "maximum current" column, chassis-type wiring, of the
     * wire gauge table at HyperPhysics (Georgia State University). AWG 20 to 10: free-air column
     * for insulation of 60 °C in Kuphaldt, <i>Lessons in Electric Circuits</i>, vol. I, ch. 12; its
     * AWG 16 to 20 are marked as estimates there. The thin wires are not in the second table, and
     * the two meet without a step back.
     */
    private static final int[] GAUGES = {32, 30, 28, 26, 24, 22, 20, 18, 16, 14, 12, 10};

    private static final double[] AMPS = {0.53, 0.86, 1.4, 2.2, 3.5, 7, 9, 13, 18, 25, 30, 40};

    private static final double[] LOG_AREAS = Arrays.stream(GAUGES)
            .mapToDouble(n -> Math.log(new Gauge(n).size().areaM2()))
            .toArray();

    private static final double[] LOG_AMPS = Arrays.stream(AMPS).map(Math::log).toArray();

    /** Preece's constant for copper, 10 244 A/in^1.5, for a diameter in millimetres. */
    private static final double PREECE_A_PER_MM15 = 10_244 / Math.pow(25.4, 1.5);

    /** Area of one circular mil (m²): a circle of 0.001 in. */
    private static final double CIRCULAR_MIL_M2 = 0.25 * Math.PI * 25.4e-6 * 25.4e-6;

    private static final double ONDERDONK = 33;
    private static final double ONDERDONK_ZERO_C = 234;

    private WireLimits() {}

    /**
     * Steady current (A) for one insulated copper wire in free air at 30 °C: a guide and no rating;
     * the insulation decides, and the maker's data come first. Straight lines in log–log between
     * the published gauges; thicker and thinner wires follow the nearest pair.
     */
    public static double steadyCurrentA(WireSize size) {
        double logArea = Math.log(size.areaM2());
        int found = Arrays.binarySearch(LOG_AREAS, logArea);
        int lower = found >= 0 ? found : -found - 2;
        int pair = Math.max(0, Math.min(lower, LOG_AREAS.length - 2));
        return Math.exp(Interpolation.between(LOG_AREAS, LOG_AMPS, pair, logArea));
    }

    /**
     * Current (A) that melts a bare copper wire in still air in the long run: I = 80.02 · d^1.5
     * with d in mm. Preece, Proc. R. Soc. (1880s), as quoted by Brooks, <i>Onderdonk's and Preece's
     * equations</i>.
     */
    public static double meltingCurrentA(WireSize size) {
        return PREECE_A_PER_MM15 * Math.pow(size.diameterMm(), 1.5);
    }

    /**
     * Time (s) in which a current melts a copper wire that loses no heat: Onderdonk, 33·(I/A)²·t =
     * log10((1083 − Ta)/(234 + Ta) + 1) with A in circular mils. Only for short times: beyond some
     * five to ten seconds heat loss counts (limit from memory, no source at hand).
     *
     * @param currentA current (A), above 0
     * @param startC temperature of the wire at the start (°C), below melting
     */
    public static double meltingTimeS(WireSize size, double currentA, double startC) {
        Require.positive(currentA, "currentA");
        double density = currentA / circularMils(size);
        return onderdonkRise(startC) / (ONDERDONK * density * density);
    }

    /**
     * Current (A) that melts a copper wire in a given time: the same formula turned round.
     *
     * @param timeS time (s), above 0
     * @param startC temperature of the wire at the start (°C), below melting
     */
    public static double meltingCurrentA(WireSize size, double timeS, double startC) {
        Require.positive(timeS, "timeS");
        return circularMils(size) * Math.sqrt(onderdonkRise(startC) / (ONDERDONK * timeS));
    }

    private static double circularMils(WireSize size) {
        return size.areaM2() / CIRCULAR_MIL_M2;
    }

    private static double onderdonkRise(double startC) {
        if (!(startC > -ONDERDONK_ZERO_C && startC < Copper.MELTING_C)) {
            throw new IllegalArgumentException("startC must lie below melting but is " + startC);
        }
        return Math.log10((Copper.MELTING_C - startC) / (ONDERDONK_ZERO_C + startC) + 1);
    }
}
