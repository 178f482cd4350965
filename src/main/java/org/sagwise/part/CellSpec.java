package org.sagwise.part;

import java.util.Optional;
import java.util.OptionalDouble;
import org.sagwise.part.key.EffectiveKeys;

/**
 * A model of cell: everything about it that does not change while it is used.
 *
 * @param chemistry its kind
 * @param format its size
 * @param internalOhm internal resistance of a new cell at 25 °C above half charge, as it shows
 *     within about two seconds of a load, without guard (Ω), 0 or more; 0 is an ideal cell
 * @param capacityAh charge that a new cell gives from full to empty (Ah), above 0
 * @param limitA continuous discharge limit (A), above 0; NaN where nobody knows it
 * @param pulse burst beyond the limit, where the maker allows one
 * @param chargeLimitA highest charging current (A), above 0
 * @param cutoffV terminal voltage under load at which to stop (V), 0 or more; at or above full a
 *     run stops at once
 * @param fullV voltage at which charging ends (V), above 0; all kinds but LFP rest there when full
 * @param guard circuit board of a protected cell
 * @param ptc what chokes a current that heats it, in the cap of an ordinary cell; its cold resistance
 *     is part of {@code internalOhm}
 * @param hasCid whether a current interrupter opens it for good when overcharge drives up its
 *     pressure; false where nobody knows
 * @param claim what the label says where it differs
 */
public record CellSpec(
        Chemistry chemistry,
        CellFormat format,
        double internalOhm,
        double capacityAh,
        double limitA,
        Optional<Pulse> pulse,
        double chargeLimitA,
        double cutoffV,
        double fullV,
        Optional<Guard> guard,
        Optional<PtcSpec> ptc,
        boolean hasCid,
        Optional<LabelClaim> claim) {

    /**
     * Continuous limit over capacity (1/h) from which on a cell counts as high-drain: that of the
     * mildest of the data sheets that {@link Distress#ofHighDrain} rests on, 15 A of 3.0 Ah.
     */
    private static final double HIGH_DRAIN_RATE = 5;

    public CellSpec {
        Require.notNegative(internalOhm, "internalOhm");
        Require.positive(capacityAh, "capacityAh");
        if (!Double.isNaN(limitA)) {
            Require.positive(limitA, "limitA");
        }
        Require.positive(chargeLimitA, "chargeLimitA");
        Require.notNegative(cutoffV, "cutoffV");
        Require.positive(fullV, "fullV");
    }

    /**
     * The cell that these values describe.
     *
     * @throws IllegalArgumentException when a number is missing or absurd
     */
    public static CellSpec of(EffectiveKeys values) {
        Chemistry chemistry = CellKind.chemistry(values);
        return new CellSpec(
                chemistry,
                CellFormat.ofTrade(values.word("format").orElseThrow()).orElseThrow(),
                values.milli("internal_mohm"),
                values.milli("capacity_mAh"),
                values.number("limit_A").orElse(Double.NaN),
                pulse(values),
                values.need("charge_limit_A"),
                values.need("cutoff_V"),
                values.need("full_V"),
                values.group("guard").map(Guard::of),
                ptc(values),
                values.flag("cid"),
                claim(values));
    }

    private static Optional<PtcSpec> ptc(EffectiveKeys values) {
        double holdA = values.number("limit_A").orElse(PtcSpec.CELL_HOLD_RATE * values.milli("capacity_mAh"));
        double ohm = PtcSpec.CELL_SHARE * values.milli("internal_mohm");
        return values.flag("ptc") && ohm > 0 ? Optional.of(PtcSpec.inCell(holdA, ohm)) : Optional.empty();
    }

    private static Optional<Pulse> pulse(EffectiveKeys values) {
        return values.isSaid("pulse_A")
                ? Optional.of(new Pulse(values.need("pulse_A"), values.need("pulse_s")))
                : Optional.empty();
    }

    private static Optional<LabelClaim> claim(EffectiveKeys values) {
        boolean claims = values.isSaid("claimed_A") || values.isSaid("claimed_mAh");
        OptionalDouble capacityAh =
                values.isSaid("claimed_mAh") ? OptionalDouble.of(values.milli("claimed_mAh")) : OptionalDouble.empty();
        return claims ? Optional.of(new LabelClaim(values.number("claimed_A"), capacityAh)) : Optional.empty();
    }

    /** The same cell with another internal resistance and, if it has a guard, another one of that (Ω). */
    public CellSpec withOhms(double internal, double guards) {
        return new CellSpec(
                chemistry,
                format,
                internal,
                capacityAh,
                limitA,
                pulse,
                chargeLimitA,
                cutoffV,
                fullV,
                guard.map(it -> it.withOhm(guards)),
                ptc,
                hasCid,
                claim);
    }

    /** Rest voltage against charge: the chemistry's curve for this model's full voltage. */
    public RestVoltageCurve restCurve() {
        return chemistry.restCurve(fullV);
    }

    /** How the resistance of a cell of this model depends on temperature, charge and health. */
    public CellResistance resistance() {
        return CellResistance.ofModel(internalOhm);
    }

    /** How cells of this size and kind warm and cool. */
    public CellThermal thermal(Cooling cooling) {
        return CellThermal.of(format, chemistry, cooling);
    }

    /**
     * From where on a cell of this model is in trouble: as its kind, but that a high-drain cell may
     * be warmer while it discharges.
     */
    public Distress distress() {
        boolean nickel = chemistry == Chemistry.INR || chemistry == Chemistry.NCR;
        boolean highDrain = nickel && limitA >= HIGH_DRAIN_RATE * capacityAh;
        return highDrain ? chemistry.distress().ofHighDrain() : chemistry.distress();
    }

    /** Resistance that a guard adds in series (Ω); 0 without guard. */
    public double guardOhm() {
        return guard.map(Guard::ohm).orElse(0.0);
    }

    /** Energy of a new, full cell without losses: capacity times mean rest voltage (Wh). */
    public double energyWh() {
        return capacityAh * restCurve().meanV();
    }
}
