package org.sagwise.network;

import java.util.List;

/**
 * One element of a {@link Network}. All values are finite and in SI units; constructors throw
 * {@link IllegalArgumentException} for anything else.
 */
public sealed interface Element {

    /**
     * Resistance (Ω) below which one counts as none. A hundredth of the smallest that the solver is
     * held to (see the package description), and far below any joint of metal; a volt across much
     * less is a current whose square no {@code double} holds.
     */
    double LEAST_OHM = 1e-9;

    /** A resistance (Ω) as it counts here: 0 below {@link #LEAST_OHM}. */
    static double countedOhm(double ohm) {
        return ohm < LEAST_OHM && ohm >= 0 ? 0 : ohm;
    }

    /** The nodes this element touches, in the order of its components. */
    List<Integer> nodes();

    /**
     * A resistance, or an ideal joint.
     *
     * @param a end from which its current counts as positive
     * @param b other end
     * @param ohm resistance (Ω), 0 or more; 0 is an ideal joint, and so is less than {@link
     *     #LEAST_OHM}
     */
    record Resistance(int a, int b, double ohm) implements Element {
        public Resistance {
            Checks.notNegative("ohm", ohm);
            ohm = countedOhm(ohm);
        }

        @Override
        public List<Integer> nodes() {
            return List.of(a, b);
        }
    }

    /**
     * A voltage source behind a series resistance: a cell, a supply. It may be charged.
     *
     * @param plus end that stands {@code emfV} higher when no current flows
     * @param minus other end
     * @param emfV electromotive force (V), of either sign
     * @param seriesOhm internal resistance (Ω), 0 or more; 0 is an ideal source
     */
    record Source(int plus, int minus, double emfV, double seriesOhm) implements Element {
        public Source {
            Checks.finite("emfV", emfV);
            Checks.notNegative("seriesOhm", seriesOhm);
        }

        @Override
        public List<Integer> nodes() {
            return List.of(plus, minus);
        }
    }

    /**
     * A current source.
     *
     * @param plus end out of which the current flows into the rest of the network
     * @param minus end into which it returns
     * @param currentA current (A), of either sign
     */
    record CurrentSource(int plus, int minus, double currentA) implements Element {
        public CurrentSource {
            Checks.finite("currentA", currentA);
        }

        @Override
        public List<Integer> nodes() {
            return List.of(plus, minus);
        }
    }

    /**
     * A charger: constant current until its terminals reach the limit voltage, then constant
     * voltage. It never sinks current; see {@link ChargerState}.
     *
     * @param plus end out of which the charging current flows
     * @param minus other end
     * @param maxA largest current (A), 0 or more
     * @param limitV voltage at its terminals that it does not pass, and holds when open (V), 0 or
     *     more
     */
    record LimitedSource(int plus, int minus, double maxA, double limitV) implements Element {
        public LimitedSource {
            Checks.notNegative("maxA", maxA);
            Checks.notNegative("limitV", limitV);
        }

        @Override
        public List<Integer> nodes() {
            return List.of(plus, minus);
        }
    }

    /**
     * Lets current through from one end to the other and not back: a diode, or a transistor that
     * guards against reversal. While it conducts, its first end stands higher by {@code dropV +
     * ohm · current}; it blocks, and carries nothing, where that would take a current below zero.
     *
     * @param from end where the current enters
     * @param to end where it leaves
     * @param dropV voltage that it keeps whatever the current is (V), 0 or more
     * @param ohm resistance (Ω), 0 or more; below {@link #LEAST_OHM} it counts as that
     */
    record OneWay(int from, int to, double dropV, double ohm) implements Element {
        public OneWay {
            Checks.notNegative("dropV", dropV);
            Checks.notNegative("ohm", ohm);
            ohm = Math.max(LEAST_OHM, ohm);
        }

        @Override
        public List<Integer> nodes() {
            return List.of(from, to);
        }
    }

    /**
     * A regulated board: brings a wanted power into whatever hangs on its output by choosing its
     * output voltage, and takes that power, divided by its efficiency, from its input. Of the two
     * input voltages at which the power balances it works at the higher. See {@link ConverterState}
     * for when it stops. It takes no current from its output.
     *
     * @param inPlus input, higher end
     * @param inMinus input, lower end
     * @param outPlus output, higher end
     * @param outMinus output, lower end; may be the same node as {@code inMinus}
     * @param powerW wanted output power (W), 0 or more
     * @param efficiency output power over input power, above 0 and at most 1
     * @param cutoffV input voltage below which it stops (V), 0 or more
     * @param maxInputA input current above which it stops (A), 0 or more
     * @param outMinV lowest output voltage (V), 0 or more
     * @param outMaxV highest output voltage (V), at least {@code outMinV}
     */
    record Converter(
            int inPlus,
            int inMinus,
            int outPlus,
            int outMinus,
            double powerW,
            double efficiency,
            double cutoffV,
            double maxInputA,
            double outMinV,
            double outMaxV)
            implements Element {
        public Converter {
            Checks.notNegative("powerW", powerW);
            Checks.positive("efficiency", efficiency);
            Checks.atMost("efficiency", efficiency, 1);
            Checks.notNegative("cutoffV", cutoffV);
            Checks.notNegative("maxInputA", maxInputA);
            Checks.notNegative("outMinV", outMinV);
            Checks.notNegative("outMaxV", outMaxV);
            Checks.atMost("outMinV", outMinV, outMaxV);
        }

        @Override
        public List<Integer> nodes() {
            return List.of(inPlus, inMinus, outPlus, outMinus);
        }
    }
}
