package org.sagwise.part;

/**
 * A charger for one cell: constant current up to the limit voltage, then constant voltage until the
 * current has fallen to the taper current.
 *
 * @param card what the catalogue says about it
 * @param currentA charging current (A), above 0
 * @param limitV voltage that it holds at the end (V), above 0
 * @param taperA current at which it stops (A), below the charging current; 0: it never stops
 */
public record ChargerSpec(Card card, double currentA, double limitV, double taperA) implements CatalogueEntry {

    public ChargerSpec {
        Require.positive(currentA, "currentA");
        Require.positive(limitV, "limitV");
        Require.notNegative(taperA, "taperA");
        if (taperA >= currentA) {
            throw new IllegalArgumentException("taperA must lie below currentA");
        }
    }

    /** Whether it stops by itself. */
    public boolean stops() {
        return taperA > 0;
    }
}
