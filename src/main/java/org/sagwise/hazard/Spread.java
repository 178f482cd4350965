package org.sagwise.hazard;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * How far apart the cells of a pack are in one respect.
 *
 * @param lowestId the cell with the least
 * @param lowest its value
 * @param highestId the cell with the most
 * @param highest its value
 */
record Spread(String lowestId, double lowest, String highestId, double highest) {

    /** The spread among some cells, at least one; of equals the first in the file counts. */
    static Spread of(List<String> cells, ToDoubleFunction<String> value) {
        String lowest = cells.get(0);
        String highest = cells.get(0);
        for (String cell : cells) {
            lowest = value.applyAsDouble(cell) < value.applyAsDouble(lowest) ? cell : lowest;
            highest = value.applyAsDouble(cell) > value.applyAsDouble(highest) ? cell : highest;
        }
        return new Spread(lowest, value.applyAsDouble(lowest), highest, value.applyAsDouble(highest));
    }

    double ratio() {
        return highest / lowest;
    }

    /** A caution that names both ends of the spread as {@code low} and {@code high}. */
    CautionBuilder caution(HazardContext context, Signal signal) {
        return new CautionBuilder(context, signal)
                .parts(lowestId, highestId)
                .names("low", List.of(lowestId))
                .names("high", List.of(highestId));
    }
}
