package org.sagwise.part;

/** Whether it matters which way round a part lies. */
public enum Ends {
    /** Either way round is the same. */
    ALIKE,
    /** Its terminals differ. */
    DIFFERENT
}
