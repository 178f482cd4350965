package org.sagwise.part;

import java.util.OptionalDouble;

/**
 * Temperatures and voltages from which on a cell is in trouble. Teaching values: the onset depends
 * on charge, heating rate and how one defines it, so the later stages are bands, and no promise
 * that a cell stays calm below them.
 *
 * @param dischargeLimitC highest temperature of the surface that makers allow while discharging (°C)
 * @param chargingC cell temperatures at which makers usually allow charging (°C)
 * @param layerBreakdownC where the solid electrolyte interphase begins to break down (°C)
 * @param ventC where the vent of a round cell opens (°C)
 * @param runawayC where thermal runaway sets in (°C)
 * @param overchargeV terminal voltage from which on overcharge does lasting harm (V)
 * @param doNotRechargeBelowV rest voltage below which a cell should not be charged again (V)
 * @param interrupterCharge charge at which an overcharged round cell's own current interrupter acts
 *     (1 = full)
 */
public record Distress(
        double dischargeLimitC,
        Band chargingC,
        Band layerBreakdownC,
        Band ventC,
        Band runawayC,
        double overchargeV,
        double doNotRechargeBelowV,
        Band interrupterCharge) {

    /** 60 °C while discharging: data sheet of a 2.6 Ah ICR 18650. */
    private static final double DISCHARGE_LIMIT_C = 60;

    /**
     * −20 to 75 °C at the surface while discharging: data sheets of high-drain 18650 of 2.0 Ah and
     * 22 A, 3.0 Ah and 15 A, 3.0 Ah and 20 A.
     */
    private static final double HIGH_DRAIN_LIMIT_C = 75;

    /** 0–45 °C while charging: usual on cell data sheets, from memory, no source at hand. */
    private static final Band CHARGING_C = new Band(0, 45);

    /**
     * 80–120 °C. The metastable layer reacts above roughly 90 °C: <i>Materials for lithium-ion
     * battery safety</i>, Science Advances (2018), as quoted elsewhere; 90–120 °C on pages of the
     * trade. The lower end of 80 °C is from memory, no source at hand.
     */
    private static final Band LAYER_BREAKDOWN_C = new Band(80, 120);

    /** 110–150 °C for a vented round cell: from memory, no source at hand. */
    private static final Band VENT_C = new Band(110, 150);

    /** Common practice, no source: leave a cell alone that rests below 2 V. */
    private static final double DO_NOT_RECHARGE_BELOW_V = 2.0;

    /** 130–150 % of full: from memory, no source at hand. */
    private static final Band INTERRUPTER_CHARGE = new Band(1.3, 1.5);

    /**
     * Thresholds of a round cell that differ from chemistry to chemistry only in what is given.
     *
     * @param runawayC where thermal runaway sets in (°C)
     * @param overchargeV where overcharge does lasting harm (V)
     */
    static Distress ofRoundCell(Band runawayC, double overchargeV) {
        return new Distress(
                DISCHARGE_LIMIT_C,
                CHARGING_C,
                LAYER_BREAKDOWN_C,
                VENT_C,
                runawayC,
                overchargeV,
                DO_NOT_RECHARGE_BELOW_V,
                INTERRUPTER_CHARGE);
    }

    /** The same for a high-drain cell, which may be warmer while it discharges. */
    Distress ofHighDrain() {
        return new Distress(
                HIGH_DRAIN_LIMIT_C,
                chargingC,
                layerBreakdownC,
                ventC,
                runawayC,
                overchargeV,
                doNotRechargeBelowV,
                interrupterCharge);
    }

    /**
     * The furthest stage that a cell at this temperature (°C) may have reached: each band counts
     * from its lower end, so the answer is early rather than late.
     */
    public DistressStage stageAt(double temperatureC) {
        if (temperatureC >= runawayC.from()) {
            return DistressStage.RUNAWAY;
        }
        if (temperatureC >= ventC.from()) {
            return DistressStage.VENT;
        }
        if (temperatureC >= layerBreakdownC.from()) {
            return DistressStage.LAYER_BREAKDOWN;
        }
        return temperatureC > dischargeLimitC ? DistressStage.ABOVE_LIMIT : DistressStage.NONE;
    }

    /** Lowest temperature (°C) at which {@code stage} may begin; empty for {@code NONE}. */
    public OptionalDouble onsetC(DistressStage stage) {
        return switch (stage) {
            case NONE -> OptionalDouble.empty();
            case ABOVE_LIMIT -> OptionalDouble.of(dischargeLimitC);
            case LAYER_BREAKDOWN -> OptionalDouble.of(layerBreakdownC.from());
            case VENT -> OptionalDouble.of(ventC.from());
            case RUNAWAY -> OptionalDouble.of(runawayC.from());
        };
    }
}
