package org.sagwise.plan.pairing;

/**
 * What is looked for.
 *
 * @param size cells of a set, from 2 to {@link #MOST_SIZE}
 * @param capacityWeight how much a difference of capacity counts, 0 or more
 * @param resistanceWeight how much a difference of internal resistance counts, 0 or more; not both 0
 * @param marriedToo whether cells that are married already may be taken from their sets
 */
public record PairingWish(int size, double capacityWeight, double resistanceWeight, boolean marriedToo) {

    /** As many cells as the largest layout that is looked at, four in a row and four side by side. */
    public static final int MOST_SIZE = 16;

    /**
     * Capacity counts in full, resistance half: readings of resistance scatter more from meter to
     * meter and day to day. Our choice.
     */
    public static final PairingWish PAIRS = new PairingWish(2, 1, 0.5, false);

    public PairingWish {
        boolean weighs = capacityWeight >= 0 && resistanceWeight >= 0 && capacityWeight + resistanceWeight > 0;
        if (size < 2 || size > MOST_SIZE || !weighs || Double.isInfinite(capacityWeight + resistanceWeight)) {
            throw new IllegalArgumentException(
                    "no such sets: " + size + ", " + capacityWeight + ", " + resistanceWeight);
        }
    }
}
