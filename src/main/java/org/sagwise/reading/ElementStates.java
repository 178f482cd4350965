package org.sagwise.reading;

import org.sagwise.network.ChargerState;
import org.sagwise.network.ConverterState;
import org.sagwise.network.Finding;

/** The network's words for states in the words of the bench. */
final class ElementStates {

    private ElementStates() {}

    static PartReading.State of(ChargerState state) {
        return switch (state) {
            case CONSTANT_CURRENT -> PartReading.State.CONSTANT_CURRENT;
            case CONSTANT_VOLTAGE -> PartReading.State.CONSTANT_VOLTAGE;
            case OFF -> PartReading.State.IDLE;
        };
    }

    static PartReading.State of(ConverterState state) {
        return switch (state) {
            case RUNNING -> PartReading.State.WORKING;
            case OUTPUT_AT_MAX -> PartReading.State.OUTPUT_AT_MAX;
            case OUTPUT_AT_MIN -> PartReading.State.OUTPUT_AT_MIN;
            case IDLE -> PartReading.State.IDLE;
            case STOPPED_CUTOFF -> PartReading.State.STOPPED_CUTOFF;
            case STOPPED_INPUT_LIMIT -> PartReading.State.STOPPED_INPUT_LIMIT;
            case STOPPED_NO_SOLUTION, STOPPED_UNSETTLED -> PartReading.State.STOPPED_NO_POWER;
            case STOPPED_OUTPUT_SHORTED -> PartReading.State.STOPPED_OUTPUT_SHORTED;
        };
    }

    static Notice.Kind of(Finding finding) {
        if (finding instanceof Finding.ContradictingIdealSources) {
            return Notice.Kind.IDEAL_SOURCES_DISAGREE;
        }
        return finding instanceof Finding.ShortedIdealSource
                ? Notice.Kind.IDEAL_SOURCE_SHORTED
                : Notice.Kind.NO_STEADY_STATE;
    }
}
