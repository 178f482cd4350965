package org.sagwise.part;

import org.sagwise.part.key.EffectiveKeys;

/**
 * A charger for one cell: constant current up to the limit voltage, then constant voltage until the
 * current has fallen to the taper current.
 *
 * @param currentA charging current (A), above 0
 * @param limitV voltage that it holds at the end (V), above 0
 * @param taperA current at which it stops (A), usually far below the charging current; 0: it never
 *     stops
 */
public record ChargerSpec(double currentA, double limitV, double taperA) {

    public ChargerSpec {
        Require.positive(currentA, "currentA");
        Require.positive(limitV, "limitV");
        Require.notNegative(taperA, "taperA");
    }

    /** The charger that these values describe. */
    public static ChargerSpec of(EffectiveKeys values) {
        return new ChargerSpec(values.need("current_A"), values.need("limit_V"), values.need("taper_A"));
    }

    /** Whether it stops by itself. */
    public boolean stops() {
        return taperA > 0;
    }
}
