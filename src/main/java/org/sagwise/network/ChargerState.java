package org.sagwise.network;

/** What an {@link Element.LimitedSource} is doing. */
public enum ChargerState {
    /** It gives its largest current; its terminals stand below the limit voltage. */
    CONSTANT_CURRENT,
    /**
     * Its terminals stand at the limit voltage; it gives between nothing and its largest current.
     */
    CONSTANT_VOLTAGE,
    /** Something else holds its terminals above the limit voltage; it gives nothing. */
    OFF
}
