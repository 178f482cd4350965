package org.sagwise.run;

/** Hears how far a run has come, and may call it off. */
@FunctionalInterface
public interface RunProgress {

    /** Listens to nothing and never calls off. */
    RunProgress NONE = state -> true;

    /**
     * Called about once a press.
     *
     * @return whether the run is to go on
     */
    boolean goesOn(RunState state);
}
