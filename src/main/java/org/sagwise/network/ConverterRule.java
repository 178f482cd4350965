package org.sagwise.network;

/**
 * The two decisions of one converter, each against a straight load line: which output voltage
 * brings the wanted power, and which input current pays for it.
 */
final class ConverterRule {
    private ConverterRule() {}

    /**
     * Output voltage (V) at which a load taking {@code openA + siemens · V} receives the wanted
     * power, held between the converter's limits. It is the positive root of the quadratic {@code
     * siemens · V² + openA · V = power}; a load that takes no current gets the highest voltage.
     */
    static double outputV(Element.Converter c, double openA, double siemens) {
        double root = Math.sqrt(openA * openA + 4 * siemens * c.powerW());
        double volt;
        if (openA >= 0) {
            double sum = openA + root;
            volt = sum == 0 ? c.outMaxV() : 2 * c.powerW() / sum;
        } else {
            volt = siemens == 0 ? c.outMaxV() : (root - openA) / (2 * siemens);
        }
        return Math.min(c.outMaxV(), Math.max(c.outMinV(), volt));
    }

    /**
     * Input current (A) that draws {@code watt} from a source of {@code openV} behind {@code ohm}:
     * the smaller root of {@code (openV − ohm · I) · I = watt}, the one at the higher voltage; NaN
     * where there is none.
     */
    static double inputA(double watt, double openV, double ohm) {
        if (watt == 0) {
            return 0;
        }
        double square = openV * openV - 4 * ohm * watt;
        return openV > 0 && square >= 0 ? 2 * watt / (openV + Math.sqrt(square)) : Double.NaN;
    }
}
