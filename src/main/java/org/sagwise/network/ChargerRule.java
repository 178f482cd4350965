package org.sagwise.network;

/** Whether a charger's state agrees with the current and voltage it led to. */
final class ChargerRule {
    /** Part of a limit by which rounding alone may pass it. */
    private static final double SLACK = 1e-9;

    private ChargerRule() {}

    /** The state a charger must take; the present one if it agrees. */
    static ChargerState next(Element.LimitedSource charger, ChargerState now, double ampere, double volt) {
        double slackA = SLACK * charger.maxA();
        double slackV = SLACK * charger.limitV() + Stance.OUTPUT_OHM * charger.maxA();
        return switch (now) {
            case CONSTANT_VOLTAGE -> {
                if (ampere > charger.maxA() + slackA) {
                    yield ChargerState.CONSTANT_CURRENT;
                }
                yield ampere < -slackA ? ChargerState.OFF : now;
            }
            case CONSTANT_CURRENT -> volt <= charger.limitV() + slackV ? now : ChargerState.CONSTANT_VOLTAGE;
            case OFF -> volt >= charger.limitV() - slackV ? now : ChargerState.CONSTANT_VOLTAGE;
        };
    }
}
