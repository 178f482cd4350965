package org.sagwise.picture.plot;

import java.util.ArrayList;
import java.util.List;

/**
 * An axis: its range and the round values marked on it.
 *
 * @param from its lower end
 * @param to its upper end, above {@code from}
 * @param ticks marked values, in order
 */
public record PlotScale(double from, double to, List<Double> ticks) {

    /** Share of the range that is left free beyond the lowest and the highest value. */
    private static final double MARGIN = 0.06;

    /** Steps of time that people count in, s. */
    private static final double[] TIME_STEPS = {
        0.1, 0.2, 0.5, 1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 10_800, 21_600, 43_200, 86_400,
        172_800
    };

    public PlotScale {
        ticks = List.copyOf(ticks);
    }

    /**
     * A scale for values from {@code least} to {@code most}.
     *
     * @param leastSpan what it spans at least, so that noise is not blown up
     * @param most number of ticks at most, at least 2
     */
    public static PlotScale ofValues(double least, double highest, double leastSpan, int most) {
        double span = Math.max(highest - least, leastSpan);
        double middle = (highest + least) / 2;
        double from = middle - span * (0.5 + MARGIN);
        double to = middle + span * (0.5 + MARGIN);
        return new PlotScale(from, to, ticks(from, to, roundStep((to - from) / most)));
    }

    /**
     * A scale from one value to another.
     *
     * @param to above {@code from}, or one tenth of it is added
     */
    public static PlotScale ofRange(double from, double to, int most) {
        double end = to > from ? to : from + Math.max(Math.abs(from) / 10, 1e-9);
        return new PlotScale(from, end, ticks(from, end, roundStep((end - from) / Math.max(1, most))));
    }

    /** A scale of time from the start to {@code endS}. */
    public static PlotScale ofTime(double endS, int most) {
        double to = Math.max(endS, 1);
        double step = TIME_STEPS[TIME_STEPS.length - 1];
        for (int i = TIME_STEPS.length - 1; i >= 0 && to / TIME_STEPS[i] <= most; i--) {
            step = TIME_STEPS[i];
        }
        return new PlotScale(0, to, ticks(0, to, step));
    }

    /** The next 1, 2 or 5 times a power of ten. */
    private static double roundStep(double least) {
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        double lead = least / power;
        return power * (lead <= 1 ? 1 : lead <= 2 ? 2 : lead <= 5 ? 5 : 10);
    }

    private static List<Double> ticks(double from, double to, double step) {
        List<Double> ticks = new ArrayList<>();
        long last = (long) Math.floor(to / step + 1e-9);
        for (long k = (long) Math.ceil(from / step - 1e-9); k <= last; k++) {
            ticks.add(k * step);
        }
        return ticks;
    }

    /** Whether a value lies between the ends. */
    public boolean holds(double value) {
        return value >= from && value <= to;
    }

    /** Place of a value between the ends, 0 to 1. */
    public double share(double value) {
        return (value - from) / (to - from);
    }

    double valueAt(double share) {
        return from + share * (to - from);
    }
}
