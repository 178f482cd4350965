package org.sagwise.run;

/** Work that may take longer than anybody waits without a word, done piece by piece. */
public interface Work {

    boolean isOver();

    /** Does a piece; only while it is not over. */
    void more();

    /** Ends it where it stands. */
    void callOff();

    /** Does all that is left. */
    default void finish() {
        while (!isOver()) {
            more();
        }
    }
}
