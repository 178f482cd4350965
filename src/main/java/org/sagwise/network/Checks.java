package org.sagwise.network;

/** Refuses values no network can hold. A refused value is an error of the calling program. */
final class Checks {
    private Checks() {}

    static void finite(String name, double value) {
        require(Double.isFinite(value), name, value, "finite");
    }

    static void notNegative(String name, double value) {
        require(Double.isFinite(value) && value >= 0, name, value, "finite and 0 or more");
    }

    static void positive(String name, double value) {
        require(Double.isFinite(value) && value > 0, name, value, "finite and above 0");
    }

    static void atMost(String name, double value, double most) {
        require(value <= most, name, value, "at most " + most);
    }

    private static void require(boolean holds, String name, double value, String rule) {
        if (!holds) {
            throw new IllegalArgumentException(name + " is " + value + " but must be " + rule);
        }
    }
}
