package org.sagwise.run;

import java.util.OptionalDouble;

/**
 * What the thumb does and when the run is over.
 *
 * @param onS how long each press lasts, s; infinite holds the button for good
 * @param offS how long the rest after each press lasts, s
 * @param untilS when the run is over at the latest, s from its start; empty runs until a cut-off is
 *     reached or something opens
 */
public record RunPlan(double onS, double offS, OptionalDouble untilS) {

    /** Three seconds every thirty: a usual way to use such a device, common practice, no source. */
    public static final RunPlan USUAL = presses(3, 27);

    public RunPlan {
        if (!(onS > 0)) {
            throw new IllegalArgumentException("onS must be above 0 but is " + onS);
        }
        if (!(offS >= 0) || Double.isInfinite(offS)) {
            throw new IllegalArgumentException("offS must be 0 or more but is " + offS);
        }
        if (untilS.isPresent() && !(untilS.getAsDouble() > 0 && untilS.getAsDouble() < 1e9)) {
            throw new IllegalArgumentException("untilS must be above 0 but is " + untilS);
        }
    }

    /** Presses of {@code onS} with rests of {@code offS} seconds until a cut-off. */
    public static RunPlan presses(double onS, double offS) {
        return new RunPlan(onS, offS, OptionalDouble.empty());
    }

    /** The button held until a cut-off. */
    public static RunPlan held() {
        return presses(Double.POSITIVE_INFINITY, 0);
    }

    /** The same up to a time and past every cut-off. */
    public RunPlan until(double seconds) {
        return new RunPlan(onS, offS, OptionalDouble.of(seconds));
    }
}
