package org.sagwise.hazard;

import org.sagwise.part.CellFormat;

/**
 * The most that a cell of a format can hold: rounded up from the best that are sold, common
 * practice, no source. A label beyond it is not believed.
 */
final class MostCapacity {

    private MostCapacity() {}

    /** Capacity (Ah) beyond which a claim for this format is absurd. */
    static double ah(CellFormat format) {
        return switch (format) {
            case F18350 -> 1.5;
            case F18650 -> 4.0;
            case F20700 -> 4.5;
            case F21700, F26650 -> 6.0;
        };
    }
}
