package org.sagwise.part;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;

/**
 * Rest voltages against charge as interpolated from open data, from empty to full.
 *
 * <p>INR (18650, 2.8 Ah) and IFR (LFP 18650, about 1.2 Ah): Sunil, Pattipati, Balasingam, Piecewise
 * Linear Approximation of Battery OCV Characteristics Using Dynamic Programming, IEEE Trans.
 * Instrum. Meas., 2025. NCR: NMC 18650, 3.0 Ah, mean of discharge and charge at C/25, 25 °C,
 * Battery Testing Consortium, Oxford Brookes University, 2021–22.
 */
final class PublishedRestVoltages {

    static final double[] CHARGES = {0, 0.05, 0.10, 0.20, 0.30, 0.40, 0.50, 0.60, 0.70, 0.80, 0.90, 0.95};

    private static final double[] INR = {
        2.7027, 3.1943, 3.3500, 3.4840, 3.5849, 3.6538, 3.7355, 3.8374, 3.9198, 4.0186, 4.0827, 4.1069
    };
    private static final double[] NCR = {
        2.651, 3.1765, 3.3142, 3.4819, 3.5793, 3.6486, 3.7220, 3.8302, 3.9243, 4.0211, 4.0900, 4.1129
    };
    private static final double[] IFR = {
        2.0102, 3.0721, 3.2029, 3.2413, 3.2778, 3.2948, 3.2991, 3.3032, 3.3163, 3.3371, 3.3411, 3.3429
    };

    private PublishedRestVoltages() {}

    /** Chemistry, charge, volts. */
    static Stream<Arguments> rows() {
        return Stream.of(rows(Chemistry.INR, INR), rows(Chemistry.NCR, NCR), rows(Chemistry.IFR, IFR))
                .flatMap(rows -> rows);
    }

    private static Stream<Arguments> rows(Chemistry chemistry, double[] volts) {
        return IntStream.range(0, volts.length).mapToObj(i -> Arguments.of(chemistry, CHARGES[i], volts[i]));
    }
}
