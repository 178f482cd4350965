package org.sagwise.hazard;

import org.sagwise.part.CellSpec;
import org.sagwise.part.Distress;
import org.sagwise.reading.CellReading;
import org.sagwise.reading.CellState;

/**
 * A cell with the button in one position: what is measured at it, and what it is.
 *
 * @param reading what is measured, with the limit for its current
 * @param spec its other limits
 * @param state its temperature
 */
record CellView(CellReading reading, CellSpec spec, CellState state) {

    String id() {
        return reading.id();
    }

    double restV() {
        return reading.restV();
    }

    double terminalV() {
        return reading.terminalV();
    }

    /** Current, A; positive when the cell gives it. */
    double currentA() {
        return reading.currentA();
    }

    /** Current pushed into it, A; negative when it gives current. */
    double chargeA() {
        return -reading.currentA();
    }

    double limitA() {
        return reading.limitA();
    }

    double heatW() {
        return reading.heatW();
    }

    /** Its current as a share of its limit. */
    double loadFraction() {
        return reading.loadFraction();
    }

    double temperatureC() {
        return state.temperatureC();
    }

    Distress distress() {
        return spec.distress();
    }

    boolean gives() {
        return currentA() > SwitchView.NO_CURRENT_A;
    }

    boolean takes() {
        return chargeA() > SwitchView.NO_CURRENT_A;
    }
}
