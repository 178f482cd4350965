package org.sagwise.part;

import java.util.stream.DoubleStream;

/**
 * Published rest voltages against charge, and the teaching curve they become.
 *
 * <p>The measured tables come from slow discharges and charges (a twentieth to a thirtieth of the
 * capacity an hour), so their ends still hold a little polarisation: the 4.2 V kinds end at 4.19 V.
 * Here a full cell of these kinds rests at exactly the voltage at which its charge ends, so the
 * last point alone is moved up to it. All points between are as published, but for cobalt oxide,
 * whose formula ends too far below. An LFP cell rests far below that voltage.
 *
 * <p>Beyond empty and full the curve is a teaching model: 0 V at a charge of −0.05, and nothing
 * stored below that (see {@link Reversal}); 5 V at 1.5, then straight on (from memory, no source at
 * hand).
 */
final class RestVoltageTables {

    private static final double[] SHARES = {0, 0.05, 0.10, 0.20, 0.30, 0.40, 0.50, 0.60, 0.70, 0.80, 0.90, 0.95};

    /**
     * 2.8 Ah INR 18650, slow discharge and charge. Interpolated from the open data of Sunil,
     * Pattipati, Balasingam, <i>Piecewise Linear Approximation of Battery OCV Characteristics Using
     * Dynamic Programming</i>, IEEE Trans. Instrum. Meas., 2025. Published end: 4.1881 V.
     */
    private static final double[] INR = {
        2.7027, 3.1943, 3.3500, 3.4840, 3.5849, 3.6538, 3.7355, 3.8374, 3.9198, 4.0186, 4.0827, 4.1069
    };

    /**
     * 3.0 Ah NMC 18650, mean of discharge and charge at C/25, 25 °C. Interpolated from the open
     * data of the Battery Testing Consortium, Oxford Brookes University, 2021–22. Stands for NCR:
     * no open table of a nickel-cobalt-aluminium cell was at hand. Published end: 4.1873 V.
     */
    private static final double[] NCR = {
        2.651, 3.1765, 3.3142, 3.4819, 3.5793, 3.6486, 3.7220, 3.8302, 3.9243, 4.0211, 4.0900, 4.1129
    };

    /**
     * From memory, no source at hand: a drawn curve for manganese spinel against graphite, whose
     * two plateaus near 4.0 and 4.1 V against lithium keep it higher in the middle. No open table
     * was found.
     */
    private static final double[] IMR = {3.00, 3.42, 3.55, 3.67, 3.75, 3.81, 3.86, 3.91, 3.96, 4.02, 4.09, 4.13};

    /**
     * Charges of {@link #IFR_VOLTS}: the usual tenths, and the published corners of the steep ends.
     */
    private static final double[] IFR_SHARES = {
        0, 0.0033, 0.0117, 0.0267, 0.05, 0.10, 0.20, 0.30, 0.40, 0.50, 0.60, 0.70, 0.80, 0.90, 0.95, 0.9833
    };

    /**
     * LFP 18650, about 1.2 Ah; same source as {@link #INR}. The published corners above, 3.4180 V at
     * 0.995 and 3.5981 V at 1, are those of a cell that is being charged.
     */
    private static final double[] IFR_VOLTS = {
        2.0102, 2.4177, 2.7405, 2.9299, 3.0721, 3.2029, 3.2413, 3.2778, 3.2948, 3.2991, 3.3032, 3.3163, 3.3371, 3.3411,
        3.3429, 3.3511
    };

    /**
     * A full LFP cell that has rested: between the last point of the table and the 3.4 V below which
     * such cells are known to settle (from memory, no source at hand). While it is charged the last
     * half per cent takes it to where its charge ends.
     */
    private static final double IFR_RESTED_V = 3.38;

    private static final double IFR_CHARGED = 1.005;

    /**
     * By how much the formula for cobalt oxide ends below 4.20 V (V). It is made up over all of the
     * upper half, with the square of the charge: a step at its very end would make the last of a
     * charge too quick. Cells known to the trade rest so, about 4.07 V at 90 %: from memory, no source
     * at hand.
     */
    private static final double COBALT_RISE_V = 4.20 - 4.1029;

    private static final double EMPTY_CHARGE = -0.05;
    private static final double OVERCHARGE = 1.5;
    private static final double OVERCHARGE_V = 5;

    private RestVoltageTables() {}

    static RestVoltageCurve inr(double fullV) {
        return extended(SHARES, INR, fullV);
    }

    static RestVoltageCurve ncr(double fullV) {
        return extended(SHARES, NCR, fullV);
    }

    static RestVoltageCurve imr(double fullV) {
        return extended(SHARES, IMR, fullV);
    }

    static RestVoltageCurve ifr(double fullV) {
        return RestVoltageCurve.through(
                joined(EMPTY_CHARGE, IFR_SHARES, 1.0, IFR_CHARGED, OVERCHARGE),
                joined(0, IFR_VOLTS, IFR_RESTED_V, fullV, OVERCHARGE_V));
    }

    static RestVoltageCurve icr(double fullV) {
        double[] volts = DoubleStream.of(SHARES)
                .map(s -> cobaltV(s) + COBALT_RISE_V * Math.pow(Math.max(0, 2 * s - 1), 2))
                .toArray();
        return extended(SHARES, volts, fullV);
    }

    /**
     * Rest voltage (V) of an 850 mAh polymer cell against charge: Chen and Rincón-Mora, <i>Accurate
     * Electrical Battery Model Capable of Predicting Runtime and I–V Performance</i>, IEEE Trans.
     * Energy Convers. 21(2), 2006, pp. 504–511. That the cell was of cobalt oxide is from memory.
     * The formula ends at 4.1029 V.
     */
    static double cobaltV(double s) {
        return -1.031 * Math.exp(-35 * s) + 3.685 + 0.2156 * s - 0.1178 * s * s + 0.3201 * s * s * s;
    }

    private static RestVoltageCurve extended(double[] charges, double[] volts, double fullV) {
        return RestVoltageCurve.through(
                joined(EMPTY_CHARGE, charges, 1.0, OVERCHARGE), joined(0, volts, fullV, OVERCHARGE_V));
    }

    private static double[] joined(double below, double[] table, double... beyond) {
        return DoubleStream.concat(
                        DoubleStream.of(below), DoubleStream.concat(DoubleStream.of(table), DoubleStream.of(beyond)))
                .toArray();
    }
}
