package org.sagwise.errand;

/** Work has ended before its time: it was called off, or has taken as much as it may. */
public final class GivenUp extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final boolean spent;

    GivenUp(boolean spent) {
        // Nobody reads where it was: no trace.
        super(spent ? "as much as it may take" : "called off", null, false, false);
        this.spent = spent;
    }

    /** Whether it has taken as much as it may; else somebody called it off. */
    public boolean isSpent() {
        return spent;
    }
}
