package org.sagwise.hazard;

/**
 * Signal words by the definitions of ANSI Z535.6, spoken of the drawn circuit as if somebody built
 * it. In order of gravity, the gravest first.
 */
public enum Signal {
    /** If not avoided, will result in death or serious injury. */
    DANGER,
    /** If not avoided, could result in death or serious injury. */
    WARNING,
    /** If not avoided, could result in minor or moderate injury. */
    CAUTION,
    /** Not about injury: about damage, or about a circuit that will not do what it is drawn for. */
    NOTICE;

    /** Whether a check of a file should fail because of it. */
    public boolean isGrave() {
        return this == DANGER || this == WARNING;
    }
}
