package org.sagwise.hazard;

import org.sagwise.reading.PartReading;
import org.sagwise.scenario.Part;

/**
 * A part that is no cell, with the button in one position.
 *
 * @param part the part as written
 * @param reading what is measured at it
 * @param context the bench it lies on
 */
record PartView(Part part, PartReading reading, HazardContext context) {

    double voltsV() {
        return Math.abs(reading.voltsV());
    }

    double currentA() {
        return Math.abs(reading.currentA());
    }

    double powerW() {
        return reading.powerW();
    }
}
