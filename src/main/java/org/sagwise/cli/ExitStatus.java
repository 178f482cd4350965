package org.sagwise.cli;

/** What the program tells the shell when it ends. */
final class ExitStatus {

    /** Done. */
    static final int DONE = 0;

    /** Done, and grave cautions were found. */
    static final int FOUND = 1;

    /** The input or the call is wrong; a message says what. */
    static final int WRONG = 2;

    /** The program itself failed. */
    static final int FAILED = 3;

    private ExitStatus() {}
}
