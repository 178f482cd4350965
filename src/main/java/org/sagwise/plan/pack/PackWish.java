package org.sagwise.plan.pack;

import java.util.OptionalDouble;
import org.sagwise.run.RunPlan;

/**
 * What somebody wants of a pack.
 *
 * @param watts in the coil of full cells (W), above 0; of a regulated one always; empty where ohms are wanted
 * @param coilOhm of the coil (Ω), above 0; empty where the coil is to be found for the watts
 * @param regulated whether a board holds the watts
 * @param lastsS how long it shall last between charges, pressed in the usual way, rests included (s); empty where
 *     that does not matter
 * @param mostCells how many cells the device has room for, 1 to {@link #MOST_CELLS}
 */
public record PackWish(
        OptionalDouble watts, OptionalDouble coilOhm, boolean regulated, OptionalDouble lastsS, int mostCells) {

    /** Most cells in a row, and most side by side, that are looked at. */
    public static final int MOST_EACH_WAY = 4;

    /** So many cells at most. */
    public static final int MOST_CELLS = MOST_EACH_WAY * MOST_EACH_WAY;

    /** How long so many presses last in the usual way, rests included (s). */
    public static double lastsS(int presses) {
        return presses * (RunPlan.USUAL.onS() + RunPlan.USUAL.offS());
    }

    public PackWish {
        if (watts.isEmpty() && (coilOhm.isEmpty() || regulated)) {
            throw new IllegalArgumentException("a wish needs watts, or the ohms of a coil without a board");
        }
        if (watts.isPresent() && coilOhm.isPresent() && !regulated) {
            throw new IllegalArgumentException("without a board, watts follow from the coil");
        }
        if (mostCells < 1 || mostCells > MOST_CELLS) {
            throw new IllegalArgumentException(
                    "mostCells must lie within 1 and " + MOST_CELLS + " but is " + mostCells);
        }
    }
}
