package org.sagwise.quantity;

import java.util.Locale;

/** One accepted way of writing each quantity, shown when another was not understood. */
final class Examples {

    private Examples() {}

    static String of(Measure measure, Locale locale) {
        double value = switch (measure.unit()) {
            case VOLT -> 4.2;
            case AMPERE -> 20;
            case OHM -> 0.3;
            case WATT, WATT_HOUR -> 17.6;
            case AMPERE_HOUR -> 2.5;
            case CELSIUS -> 25;
            case KELVIN -> 10;
            case METRE -> 0.06;
            case SQUARE_METRE -> 0.82e-6;
            case SECOND -> 3;
            case FRACTION -> 0.8;
            case AMPERE_SQUARED_SECOND -> 120;
            case WATT_PER_SQUARE_METRE -> 200e3;
            case KILOGRAM -> 0.046;
        };
        return QuantityFormat.forPeople(locale).print(value, measure.scale(), Digits.all());
    }
}
