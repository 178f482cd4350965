package org.sagwise.cli;

import picocli.CommandLine.Option;

/** Whether a call may replace a file that is there. */
final class Overwriting {

    @Option(names = "--force", descriptionKey = "force")
    private boolean wanted;

    boolean isWanted() {
        return wanted;
    }
}
