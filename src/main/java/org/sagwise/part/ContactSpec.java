package org.sagwise.part;

/**
 * A kind of contact between a cell and what it touches.
 *
 * @param card what the catalogue says about it
 * @param ohm typical resistance (Ω), 0 or more
 * @param spread resistances in which such contacts are found (Ω)
 */
public record ContactSpec(Card card, double ohm, Band spread) implements CatalogueEntry {

    public ContactSpec {
        Require.notNegative(ohm, "ohm");
        if (!spread.contains(ohm)) {
            throw new IllegalArgumentException("ohm must lie within its spread");
        }
    }
}
