package org.sagwise.quantity;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How each unit is printed where nobody asks for anything else: the one place that decides it.
 *
 * <p>Volts with two decimals, amps and watts with three significant digits, ohms as {@code 0.30 Ω}
 * and {@code 30 mΩ}, capacity in whole {@code mAh}. A ladder of steps from small to large; the
 * largest step that the rounded number reaches is taken.
 */
final class HouseStyle {

    /**
     * One rung of the ladder.
     *
     * @param least the step is taken once the step below it would print this number or more; in
     *     this step's scale
     * @param bottom the same in the unit
     */
    record Step(Scale scale, double least, double bottom, Digits digits) {

        /** No rounding of ours makes a number larger than this part of what it becomes. */
        private static final double SURELY_BELOW = 0.98;

        /** Zero volts are {@code 0.00 V}, though the smallest step is {@code mV}. */
        boolean isForZero() {
            return ZERO_SYMBOLS.contains(scale.symbol());
        }

        /** Whether the value, as this step would print it, is large enough for the next. */
        boolean reaches(Step next, double value) {
            double size = Math.abs(value);
            return size >= next.bottom || size > SURELY_BELOW * next.bottom && rounded(size) >= next.bottom;
        }

        /** Size of the value, in the unit, as this step would print it. */
        private double rounded(double size) {
            return scale.toUnit(digits.round(scale.exactFromUnit(size)));
        }
    }

    private static final Set<String> ZERO_SYMBOLS = Set.of("V", "A", "Ω", "W", "Wh", "s");

    private static final Set<Unit> FLOWS = Set.of(Unit.VOLT, Unit.AMPERE, Unit.WATT, Unit.WATT_HOUR);

    private static final double DUST = 1e-10;

    /** Built once: a bench prints hundreds of numbers for every picture. */
    private static final Map<Unit, List<Step>> LADDERS =
            Stream.of(Unit.values()).collect(Collectors.toUnmodifiableMap(unit -> unit, HouseStyle::ladder));

    private HouseStyle() {}

    /**
     * Whether a value is smaller than anything a bench has to show, and what rounding leaves over:
     * a voltmeter of 10 MΩ still takes some 1e-7 A and 1e-6 W.
     */
    static boolean isDust(double value, Unit unit) {
        return Math.abs(value) < DUST && FLOWS.contains(unit);
    }

    /** The step for this value; NaN, infinities and zero stand on the unit's own step. */
    static Step of(double value, Unit unit) {
        List<Step> steps = LADDERS.get(unit);
        if (value == 0 || !Double.isFinite(value)) {
            return steps.stream().filter(Step::isForZero).findFirst().orElse(steps.get(0));
        }
        Step chosen = steps.get(0);
        for (Step next : steps) {
            chosen = chosen.reaches(next, value) ? next : chosen;
        }
        return chosen;
    }

    private static List<Step> ladder(Unit unit) {
        Digits three = Digits.significant(3);
        Digits short3 = Digits.atMostSignificant(3);
        return switch (unit) {
            case VOLT -> List.of(step(unit, "mV", 0, short3), step(unit, "V", 0.1, Digits.decimals(2)));
            case AMPERE ->
                List.of(step(unit, "µA", 0, short3), step(unit, "mA", 0.1, short3), step(unit, "A", 0.1, three));
            case OHM ->
                List.of(
                        step(unit, "µΩ", 0, short3),
                        step(unit, "mΩ", 0.1, short3),
                        step(unit, "Ω", 0.1, Digits.decimals(2)),
                        step(unit, "Ω", 10, three),
                        step(unit, "kΩ", 1, three),
                        step(unit, "MΩ", 1, three));
            case WATT -> List.of(step(unit, "mW", 0, short3), step(unit, "W", 0.1, three), step(unit, "kW", 1, three));
            case WATT_HOUR ->
                List.of(step(unit, "mWh", 0, short3), step(unit, "Wh", 0.1, three), step(unit, "kWh", 1, three));
            case AMPERE_HOUR ->
                List.of(
                        step(unit, "mAh", 0, short3),
                        step(unit, "mAh", 100, Digits.decimals(0)),
                        step(unit, "Ah", 10, three));
            case CELSIUS -> List.of(step(unit, "°C", 0, Digits.decimals(0)));
            case KELVIN -> List.of(step(unit, "K", 0, short3));
            case METRE -> List.of(step(unit, "mm", 0, short3), step(unit, "m", 1, short3));
            case SQUARE_METRE -> List.of(step(unit, "mm²", 0, short3));
            case SECOND -> List.of(step(unit, "ms", 0, short3), step(unit, "s", 0.1, Digits.atMostDecimals(1)));
            case FRACTION ->
                List.of(step(unit, "%", 0, Digits.atMostDecimals(1)), step(unit, "%", 10, Digits.decimals(0)));
            case AMPERE_SQUARED_SECOND -> List.of(step(unit, "A²s", 0, short3));
            case WATT_PER_SQUARE_METRE -> List.of(step(unit, "mW/mm²", 0, three));
            case KILOGRAM ->
                List.of(step(unit, "mg", 0, short3), step(unit, "g", 1, short3), step(unit, "kg", 1, short3));
        };
    }

    private static Step step(Unit unit, String symbol, double least, Digits digits) {
        Scale scale = unit.scale(symbol);
        return new Step(scale, least, scale.toUnit(least), digits);
    }
}
