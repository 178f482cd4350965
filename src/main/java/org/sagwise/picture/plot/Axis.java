package org.sagwise.picture.plot;

import java.util.function.DoubleFunction;
import org.sagwise.quantity.Digits;
import org.sagwise.quantity.Measure;
import org.sagwise.quantity.QuantityFormat;

/**
 * What one way of a chart means.
 *
 * @param title what is told along it, for people; empty where it goes without saying
 * @param tick how a round value is written at it
 * @param value how a value is written where it is read off
 * @param reach how its ends are found
 * @param least its lower end; with {@link Reach#AROUND} what it spans at least
 * @param most its upper end; without meaning with {@link Reach#AROUND}
 */
public record Axis(
        String title,
        DoubleFunction<String> tick,
        DoubleFunction<String> value,
        Reach reach,
        double least,
        double most) {

    /** How the ends of an axis are found. */
    public enum Reach {
        /** From zero to an end, marked in steps that people count time in. */
        TIME,
        /** From one end to the other. */
        EXACT,
        /** Around whatever is drawn. */
        AROUND
    }

    /** Time from the start to an end, s. */
    public static Axis time(double endS, DoubleFunction<String> word) {
        return new Axis("", word, word, Reach.TIME, 0, endS);
    }

    /** Around whatever is drawn; spans at least so much, so that noise is not blown up. */
    public static Axis around(
            String title, double leastSpan, DoubleFunction<String> tick, DoubleFunction<String> value) {
        return new Axis(title, tick, value, Reach.AROUND, leastSpan, Double.NaN);
    }

    /** Around whatever is drawn, in a unit as the house prints it. */
    public static Axis around(String title, double leastSpan, Measure measure, QuantityFormat format) {
        return around(title, leastSpan, tick(measure, format), value -> format.print(value, measure.unit()));
    }

    /** From one value to another, in a unit as the house prints it. */
    public static Axis exact(String title, double from, double to, Measure measure, QuantityFormat format) {
        return new Axis(
                title,
                tick(measure, format),
                value -> format.print(value, measure.unit()),
                Reach.EXACT,
                Math.min(from, to),
                Math.max(from, to));
    }

    private static DoubleFunction<String> tick(Measure measure, QuantityFormat format) {
        return value -> format.print(value, measure.scale(), Digits.atMostSignificant(5));
    }

    /**
     * Its scale.
     *
     * @param low the lowest value that is drawn, NaN if there is none
     * @param high the highest
     * @param ticks how many values are marked at most
     */
    PlotScale scale(double low, double high, int ticks) {
        return switch (reach) {
            case TIME -> PlotScale.ofTime(most, ticks);
            case EXACT -> PlotScale.ofRange(least, most, ticks);
            case AROUND ->
                Double.isFinite(low)
                        ? PlotScale.ofValues(low, high, least, Math.max(2, ticks))
                        : PlotScale.ofValues(0, 1, least, Math.max(2, ticks));
        };
    }
}
