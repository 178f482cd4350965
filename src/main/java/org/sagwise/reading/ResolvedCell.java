package org.sagwise.reading;

import org.sagwise.network.Element;
import org.sagwise.part.CellResistance;
import org.sagwise.part.CellSpec;
import org.sagwise.part.CellThermal;
import org.sagwise.part.Cooling;
import org.sagwise.part.key.EffectiveKeys;
import org.sagwise.scenario.Part;

/**
 * A cell on the bench with all its values.
 *
 * @param part the cell as written
 * @param spec its numbers
 * @param resistance its resistance against temperature, charge and health
 * @param start its state when the scenario begins
 * @param health share of the new capacity that is left, above 0, at most 1
 * @param isTorn whether its wrap is torn, so that the can may touch something
 * @param cooling in what it lies
 */
public record ResolvedCell(
        Part part,
        CellSpec spec,
        CellResistance resistance,
        CellState start,
        double health,
        boolean isTorn,
        Cooling cooling) {

    /**
     * A cell whose values are known.
     *
     * @param described what its values mean
     */
    static ResolvedCell of(Part part, EffectiveKeys values, CellSpec described) {
        CellSpec spec = described.withOhms(
                Element.countedOhm(described.internalOhm()), Element.countedOhm(described.guardOhm()));
        double charge = values.number("charge").orElse(0);
        CellState start = new CellState(
                charge,
                values.number("rest_V").orElseGet(() -> spec.restCurve().voltsAt(charge)),
                values.need("polarisation_V"),
                values.need("temperature_C"),
                CellState.Guard.CLOSED);
        double health = values.need("health");
        boolean measured = values.isOwn("internal_mohm");
        CellResistance resistance =
                measured ? CellResistance.measured(spec.internalOhm(), start.charge(), health) : spec.resistance();
        boolean torn = values.word("wrap").orElse("").equals("torn");
        Cooling cooling = values.word("cooling").map(Cooling::of).orElse(Cooling.STILL_AIR);
        return new ResolvedCell(part, spec, resistance, start, health, torn, cooling);
    }

    public String id() {
        return part.id();
    }

    /** Resistance between its terminals in a state, guard and PTC included, Ω. */
    public double ohmAt(CellState state) {
        return resistance.ohmAt(state.temperatureC(), state.charge(), health) + spec.guardOhm() + state.ptcOhm();
    }

    /** How it warms and cools where it lies. */
    public CellThermal thermal() {
        return spec.thermal(cooling);
    }

    /** Charge that it can give from full to empty at its age, Ah. */
    public double capacityAh() {
        return spec.capacityAh() * health;
    }
}
