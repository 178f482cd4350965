package org.sagwise.assessment.fix;

import java.util.OptionalDouble;
import java.util.function.DoublePredicate;

/** Finds how far a number must be changed until something holds. */
final class Tuning {

    private static final int STEPS = 16;

    private Tuning() {}

    /**
     * About the value nearest to a start from which on something holds, by bisection of the ratio;
     * empty if it does not hold at the far end either.
     *
     * @param start where it does not hold, above 0
     * @param far how far it may go, above 0, on either side of the start
     */
    static OptionalDouble nearest(double start, double far, DoublePredicate holds) {
        if (!(start > 0) || !holds.test(far)) {
            return OptionalDouble.empty();
        }
        double bad = start;
        double good = far;
        for (int i = 0; i < STEPS; i++) {
            double middle = Math.sqrt(bad * good);
            if (holds.test(middle)) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return OptionalDouble.of(good);
    }
}
