package org.sagwise.part;

import java.util.Optional;

/** Collects the numbers of a {@link CellSpec}; the record checks them when it is built. */
public final class CellSpecBuilder {

    private Card card = Card.unlisted("cell");
    private Chemistry chemistry;
    private CellFormat format;
    private double internalOhm = Double.NaN;
    private double capacityAh = Double.NaN;
    private double limitA = Double.NaN;
    private Optional<Pulse> pulse = Optional.empty();
    private double chargeLimitA = Double.NaN;
    private double cutoffV = Double.NaN;
    private double fullV;
    private Optional<Guard> guard = Optional.empty();
    private Optional<LabelClaim> claim = Optional.empty();

    CellSpecBuilder(Chemistry chemistry, CellFormat format) {
        this.format = format;
        chemistry(chemistry);
    }

    CellSpecBuilder(CellSpec spec) {
        card = spec.card();
        chemistry = spec.chemistry();
        format = spec.format();
        internalOhm = spec.internalOhm();
        capacityAh = spec.capacityAh();
        limitA = spec.limitA();
        pulse = spec.pulse();
        chargeLimitA = spec.chargeLimitA();
        cutoffV = spec.cutoffV();
        fullV = spec.fullV();
        guard = spec.guard();
        claim = spec.claim();
    }

    public CellSpecBuilder card(Card value) {
        card = value;
        return this;
    }

    /** Sets the kind, and with it its usual full voltage and cut-off for use. */
    public CellSpecBuilder chemistry(Chemistry value) {
        chemistry = value;
        fullV = value.fullV();
        cutoffV = Double.NaN;
        return this;
    }

    public CellSpecBuilder format(CellFormat value) {
        format = value;
        return this;
    }

    public CellSpecBuilder internalOhm(double value) {
        internalOhm = value;
        return this;
    }

    public CellSpecBuilder capacityAh(double value) {
        capacityAh = value;
        return this;
    }

    public CellSpecBuilder limitA(double value) {
        limitA = value;
        return this;
    }

    public CellSpecBuilder pulse(Pulse value) {
        pulse = Optional.of(value);
        return this;
    }

    public CellSpecBuilder chargeLimitA(double value) {
        chargeLimitA = value;
        return this;
    }

    public CellSpecBuilder cutoffV(double value) {
        cutoffV = value;
        return this;
    }

    public CellSpecBuilder fullV(double value) {
        fullV = value;
        return this;
    }

    public CellSpecBuilder guard(Guard value) {
        guard = Optional.of(value);
        return this;
    }

    /**
     * Sets a guard with the voltage limits that are usual for the kind set so far.
     *
     * @see Guard#usual
     */
    public CellSpecBuilder usualGuard(double tripA, double tripS, double ohm) {
        return guard(Guard.usual(chemistry, tripA, tripS, ohm));
    }

    public CellSpecBuilder claim(LabelClaim value) {
        claim = Optional.of(value);
        return this;
    }

    /**
     * The cell. Where no charging limit was given it is half the capacity an hour, the standard
     * charge on the data sheet of a 2.5 Ah high-drain 18650. Where no cut-off was given it is the
     * kind's, or in proportion less when the cell is full below its kind's full voltage.
     *
     * @throws IllegalArgumentException when a number is missing or absurd
     */
    public CellSpec build() {
        double charging = Double.isNaN(chargeLimitA) ? 0.5 * capacityAh : chargeLimitA;
        return new CellSpec(
                card,
                chemistry,
                format,
                internalOhm,
                capacityAh,
                limitA,
                pulse,
                charging,
                Double.isNaN(cutoffV) ? usualCutoffV() : cutoffV,
                fullV,
                guard,
                claim);
    }

    private double usualCutoffV() {
        return chemistry.useCutoffV() * Math.min(1, fullV / chemistry.fullV());
    }
}
