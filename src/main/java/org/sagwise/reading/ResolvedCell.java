package org.sagwise.reading;

import java.util.OptionalDouble;
import org.sagwise.network.Element;
import org.sagwise.part.Catalogue;
import org.sagwise.part.CellFormat;
import org.sagwise.part.CellResistance;
import org.sagwise.part.CellSpec;
import org.sagwise.part.CellSpecBuilder;
import org.sagwise.part.Chemistry;
import org.sagwise.part.LabelClaim;
import org.sagwise.part.Pulse;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Part;

/**
 * A cell on the bench with its own keys laid over those of its model.
 *
 * @param part the cell as written
 * @param spec its numbers
 * @param resistance its resistance against temperature, charge and health
 * @param start its state when the scenario begins
 * @param health share of the new capacity that is left, above 0, at most 1
 */
public record ResolvedCell(Part part, CellSpec spec, CellResistance resistance, CellState start, double health) {

    private static final double MILLI = 1e-3;

    /**
     * Looks a cell up.
     *
     * @param ambientC temperature it has unless it says otherwise, °C
     * @throws IllegalArgumentException if its model is not in the catalogue; the rules of the
     *     scenario find that first
     */
    static ResolvedCell of(Part part, Catalogue catalogue, double ambientC) {
        CellSpec spec = spec(part, catalogue);
        double health = part.numberOrDefault("health");
        CellState start = start(part, spec, ambientC);
        boolean measured = part.keys().has("internal_mohm");
        CellResistance resistance =
                measured ? CellResistance.measured(spec.internalOhm(), start.charge(), health) : spec.resistance();
        return new ResolvedCell(part, spec, resistance, start, health);
    }

    public String id() {
        return part.id();
    }

    /** Whether its wrap is torn, so that the can may touch something. */
    public boolean isTorn() {
        return part.wordOrDefault("wrap").orElse("").equals("torn");
    }

    /** Resistance between its terminals in a state, guard included, Ω. */
    public double ohmAt(CellState state) {
        return resistance.ohmAt(state.temperatureC(), state.charge(), health) + spec.guardOhm();
    }

    /** Charge that it can give from full to empty at its age, Ah. */
    public double capacityAh() {
        return spec.capacityAh() * health;
    }

    private static CellSpec spec(Part part, Catalogue catalogue) {
        Keys keys = part.keys();
        CellSpecBuilder builder = part.model()
                .map(id -> model(id, catalogue).toBuilder())
                .orElseGet(() -> CellSpec.builder(
                        chemistry(part.wordOrDefault("chemistry").get()),
                        format(part.wordOrDefault("format").get())));
        keys.text("chemistry").ifPresent(word -> builder.chemistry(chemistry(word)));
        keys.text("format").ifPresent(word -> builder.format(format(word)));
        keys.number("internal_mohm").ifPresent(mohm -> builder.internalOhm(Element.countedOhm(mohm * MILLI)));
        keys.number("capacity_mAh").ifPresent(mah -> builder.capacityAh(mah * MILLI));
        keys.number("limit_A").ifPresent(builder::limitA);
        keys.number("charge_limit_A").ifPresent(builder::chargeLimitA);
        keys.number("full_V").ifPresent(builder::fullV);
        keys.number("cutoff_V").ifPresent(builder::cutoffV);
        keys.number("pulse_A").ifPresent(amps -> builder.pulse(new Pulse(amps, keys.number("pulse_s", 1))));
        keys.group("guard").ifPresent(guard -> guard(guard, builder));
        if (keys.has("claimed_A") || keys.has("claimed_mAh")) {
            builder.claim(new LabelClaim(keys.number("claimed_A"), ampereHours(keys)));
        }
        return builder.build();
    }

    private static CellSpec model(String id, Catalogue catalogue) {
        return catalogue.cells().find(id).orElseThrow(() -> new IllegalArgumentException("no cell model " + id));
    }

    private static OptionalDouble ampereHours(Keys keys) {
        return keys.has("claimed_mAh")
                ? OptionalDouble.of(keys.number("claimed_mAh", 0) * MILLI)
                : OptionalDouble.empty();
    }

    private static void guard(Keys guard, CellSpecBuilder builder) {
        double ohm = Element.countedOhm(guard.number("mohm", 0) * MILLI);
        builder.usualGuard(guard.number("trip_A", 0), guard.number("trip_s", 0), ohm);
    }

    private static Chemistry chemistry(String word) {
        return Chemistry.valueOf(word);
    }

    private static CellFormat format(String word) {
        return CellFormat.ofTrade(word).orElseThrow();
    }

    private static CellState start(Part part, CellSpec spec, double ambientC) {
        Keys keys = part.keys();
        double charge = keys.number("charge").orElseGet(() -> spec.restCurve().chargeAt(keys.number("rest_V", 0)));
        double restV = keys.number("rest_V").orElseGet(() -> spec.restCurve().voltsAt(charge));
        return new CellState(
                charge,
                restV,
                part.numberOrDefault("polarisation_V"),
                keys.number("temperature_C", ambientC),
                CellState.Guard.CLOSED);
    }
}
