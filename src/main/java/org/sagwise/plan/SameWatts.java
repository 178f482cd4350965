package org.sagwise.plan;

import java.util.List;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.sagwise.part.Catalogue;
import org.sagwise.part.PartKind;
import org.sagwise.reading.Bench;
import org.sagwise.reading.CoilReading;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/**
 * Finds the coil that takes given watts from a pack, at the instant of firing. Of the two coils
 * that do, the one of more ohms is taken: it asks for less current. The power in a coil rises with
 * falling ohms only until they equal those of everything else in the ring, and then falls again
 * (maximum power transfer).
 */
public final class SameWatts {

    private static final double MOST_OHM = 1e5;
    private static final double ACCURACY_OHM = 1e-12;
    private static final int MOST_EVALUATIONS = 200;

    private SameWatts() {}

    /** What came of the search. */
    public sealed interface Answer {

        /**
         * There is such a coil.
         *
         * @param ohm its resistance at 20 °C, Ω
         * @param scenario the scenario with it
         */
        record Found(double ohm, Scenario scenario) implements Answer {}

        /**
         * This pack cannot give as much to any coil.
         *
         * @param mostW the most that it can give, W
         * @param atOhm to a coil of so many ohms, Ω
         */
        record TooMuch(double mostW, double atOhm) implements Answer {}

        /** Which coil it is makes no difference, or there is none or more than one to choose. */
        record NoSingleCoil(Why why) implements Answer {}
    }

    /** Why the question has no answer. */
    public enum Why {
        /** There is no coil. */
        NO_COIL,
        /** There are several coils. */
        SEVERAL_COILS,
        /** A regulated board gives its watts whatever the coil. */
        REGULATED,
        /** No power reaches the coil. */
        NO_POWER
    }

    /**
     * Finds the coil for so many watts.
     *
     * @param powerW watts in the coil with the button held, above 0
     */
    public static Answer coilFor(Scenario scenario, Catalogue catalogue, double powerW) {
        if (!(powerW > 0)) {
            throw new IllegalArgumentException("powerW must be above 0 but is " + powerW);
        }
        List<Part> coils = scenario.partsOf(PartKind.COIL);
        if (coils.size() != 1) {
            return new Answer.NoSingleCoil(coils.isEmpty() ? Why.NO_COIL : Why.SEVERAL_COILS);
        }
        if (!scenario.partsOf(PartKind.BOARD).isEmpty()) {
            return new Answer.NoSingleCoil(Why.REGULATED);
        }
        String coil = coils.get(0).id();
        UnivariateFunction power = ohm -> powerW(with(scenario, coil, ohm), catalogue, coil);
        return answer(scenario, coil, power, powerW);
    }

    private static Answer answer(Scenario scenario, String coil, UnivariateFunction power, double powerW) {
        double sourceOhm = sourceOhm(power);
        if (Double.isNaN(sourceOhm)) {
            return new Answer.NoSingleCoil(Why.NO_POWER);
        }
        double least = Math.max(sourceOhm, ACCURACY_OHM);
        double most = power.value(least);
        if (powerW > most) {
            return new Answer.TooMuch(most, sourceOhm);
        }
        if (powerW < power.value(MOST_OHM)) {
            return new Answer.NoSingleCoil(Why.NO_POWER);
        }
        double logOhm = new BrentSolver(1e-14, 1e-15)
                .solve(
                        MOST_EVALUATIONS,
                        log -> power.value(Math.exp(log)) - powerW,
                        Math.log(least),
                        Math.log(MOST_OHM));
        double ohm = Math.exp(logOhm);
        return new Answer.Found(ohm, with(scenario, coil, ohm));
    }

    /**
     * Resistance of all but the coil, Ω, from the powers at two loads: with U the open voltage,
     * √(P·R) = U·R/(R + r). NaN without power.
     */
    private static double sourceOhm(UnivariateFunction power) {
        double first = 1;
        double second = 10;
        double a = Math.sqrt(power.value(first) * first);
        double b = Math.sqrt(power.value(second) * second);
        if (!(a > 0) || !(b > 0)) {
            return Double.NaN;
        }
        double r = first * second * (b - a) / (a * second - b * first);
        return Math.max(0, r);
    }

    private static double powerW(Scenario scenario, Catalogue catalogue, String coil) {
        return Bench.of(scenario, catalogue)
                .fired()
                .coil(coil)
                .map(CoilReading::powerW)
                .orElse(Double.NaN);
    }

    /** A wound coil becomes one of plain ohms: how to wind it is another question. */
    private static Scenario with(Scenario scenario, String coil, double ohm) {
        return scenario.withPart(coil, part -> part.without("wire").with("ohm", ohm));
    }
}
