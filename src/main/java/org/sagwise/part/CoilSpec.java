package org.sagwise.part;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A ready-made coil.
 *
 * @param card what the catalogue says about it
 * @param ohm resistance at 20 °C (Ω), above 0
 * @param limitW highest power it is meant for (W), where one is given
 * @param winding how it is wound, where that is known; its resistance is {@code ohm}
 */
public record CoilSpec(Card card, double ohm, OptionalDouble limitW, Optional<CoilWinding> winding)
        implements CatalogueEntry {

    public CoilSpec {
        Require.positive(ohm, "ohm");
        limitW.ifPresent(limit -> Require.positive(limit, "limitW"));
    }

    /** A coil of which only the resistance is known; heat does not change it. */
    public static CoilSpec plain(Card card, double ohm, OptionalDouble limitW) {
        return new CoilSpec(card, ohm, limitW, Optional.empty());
    }

    /** A coil that is described by its winding. */
    public static CoilSpec wound(Card card, CoilWinding winding, OptionalDouble limitW) {
        return new CoilSpec(card, winding.ohm(), limitW, Optional.of(winding));
    }

    /** Resistance (Ω) at this temperature (°C). */
    public double ohmAt(double temperatureC) {
        return winding.map(wound -> wound.ohmAt(temperatureC)).orElse(ohm);
    }
}
