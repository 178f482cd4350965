package org.sagwise.network;

/**
 * What an {@link Element.Converter} is doing, or why it stopped. A stopped one carries no current.
 */
public enum ConverterState {
    /** The wanted power reaches the output. */
    RUNNING,
    /** The output stands at its highest voltage and gets less than the wanted power. */
    OUTPUT_AT_MAX,
    /** The output stands at its lowest voltage and gets more than the wanted power. */
    OUTPUT_AT_MIN,
    /**
     * No current flows: nothing hangs on the output (which then stands at its highest voltage), the
     * output is held up from outside, no power is wanted, or no source reaches the input.
     */
    IDLE,
    /** The input stands below the cut-off voltage, unloaded or under load. */
    STOPPED_CUTOFF,
    /** The input current would pass its limit. */
    STOPPED_INPUT_LIMIT,
    /** The source cannot deliver this power at any voltage. */
    STOPPED_NO_SOLUTION,
    /** The output sees less than a micro-ohm. */
    STOPPED_OUTPUT_SHORTED,
    /** Several converters or chargers found no common state within the allowed number of steps. */
    STOPPED_UNSETTLED;

    /** Whether power reaches the output. */
    public boolean delivers() {
        return this == RUNNING || this == OUTPUT_AT_MAX || this == OUTPUT_AT_MIN;
    }
}
