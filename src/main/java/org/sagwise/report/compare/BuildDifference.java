package org.sagwise.report.compare;

import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;

/** Something in which two builds differ. */
public sealed interface BuildDifference {

    /** Which scenario. */
    enum Side {
        FIRST,
        SECOND
    }

    /** A part that stands for none in the other scenario. */
    record PartOnly(Side side, Part part) implements BuildDifference {}

    /** A cell, supply or charger that is joined the other way round. */
    record Turned(Part first, Part second) implements BuildDifference {}

    /**
     * A property of a part.
     *
     * @param key as a scenario file calls it
     * @param was its value as written in the first; empty if it is not said there
     * @param is its value as written in the second; empty if it is not said there
     */
    record KeyChanged(Part first, Part second, String key, String was, String is) implements BuildDifference {}

    /** A joint that the other scenario lacks. */
    record JointOnly(Side side, Link link) implements BuildDifference {}

    /** A joint of the same two points that is made differently. */
    record JointChanged(Link first, Link second, Joint was, Joint is) implements BuildDifference {}

    /** The temperature around the bench, °C. */
    record Ambient(double wasC, double isC) implements BuildDifference {}
}
