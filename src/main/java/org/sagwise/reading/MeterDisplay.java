package org.sagwise.reading;

import java.util.OptionalInt;

/** What the meter in the hand shows, or why it shows nothing. */
public sealed interface MeterDisplay {

    /**
     * Volts.
     *
     * @param volts red over black, V; NaN where nothing joins the two or one hangs in the air
     */
    record Volts(double volts) implements MeterDisplay {}

    /**
     * Amps through the meter as if it stood in line.
     *
     * @param currentA from red to black, A; NaN where it cannot be told
     * @param joint place of the link that it takes the place of; empty in a gap
     */
    record Amps(double currentA, OptionalInt joint) implements MeterDisplay {

        public Place place() {
            return joint.isPresent() ? Place.JOINT : Place.GAP;
        }
    }

    /**
     * Resistance between the probes.
     *
     * @param ohm Ω; infinite where the meter finds no way from one to the other
     */
    record Ohms(double ohm) implements MeterDisplay {}

    /**
     * The meter must not be used like that.
     *
     * @param why what is wrong
     * @param part id of the part that it is about; empty if it is about none
     * @param currentA what would flow through the meter, A; NaN if that is not the point
     */
    record Refused(Why why, String part, double currentA) implements MeterDisplay {}

    /** Where a meter on amps stands. */
    enum Place {
        /** In the place of a joint, as if that were opened for it. */
        JOINT,
        /** Between two points that nothing joins: it closes the gap. */
        GAP
    }

    /** Why a meter shows nothing. */
    enum Why {
        /** On amps, both probes rest on one point. */
        ONE_POINT,
        /** On amps, joints lead round the meter and carry what it should count. */
        JOINED_ANYWAY,
        /** On amps, the meter would lead the current past a load. */
        PAST_LOAD,
        /** On amps, the meter would short a source. */
        SHORT,
        /** On amps and in line, more would flow than the meter's fuse bears. */
        ABOVE_FUSE,
        /** On ohms, a source drives or may drive current through what is measured. */
        ALIVE
    }
}
