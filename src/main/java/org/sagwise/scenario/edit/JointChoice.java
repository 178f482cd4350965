package org.sagwise.scenario.edit;

import org.sagwise.part.key.Keys;

/**
 * How the next joint that is pulled by hand is made. The numbers are what a hobby builder commonly
 * has at hand: common practice, no source.
 */
public enum JointChoice {
    /** A jumper of 18 AWG, 60 mm long. */
    WIRE(Keys.of("jumper", Keys.of("awg", 18, "length_mm", 60))),
    /** A sled's clip or plate. */
    CONTACT(Keys.of("contact_mohm", JointChoice.CONTACT_MOHM)),
    /** Without any resistance, as in textbooks. */
    IDEAL(Keys.of("ideal", true));

    /** Contact resistance of parts that touch, mΩ: typical of a clean sled clip. */
    public static final double CONTACT_MOHM = 4;

    private final Keys joint;

    JointChoice(Keys joint) {
        this.joint = joint;
    }

    /** The joints of a plate: a plate is no wire, so that where wires are chosen it is contacts. */
    public Keys plate() {
        return this == WIRE ? CONTACT.joint : joint;
    }

    /** The joint as a link of a scenario file says it. */
    public Keys joint() {
        return joint;
    }
}
