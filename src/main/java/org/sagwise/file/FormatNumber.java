package org.sagwise.file;

import java.util.Collections;
import java.util.Optional;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Problem;
import org.sagwise.scenario.ScenarioKeys;

/** The number of the format in front of a scenario file, and what other numbers mean. */
final class FormatNumber {

    private static final String KEY = "sagwise";

    private FormatNumber() {}

    /** What is wrong with the number, if anything. */
    static Optional<Finding> check(Node.Group file) {
        if (!file.has(KEY)) {
            return Optional.of(Finding.of("", Problem.NO_FORMAT));
        }
        Object written = file.get(KEY).orElseThrow().plain();
        if (!(written instanceof Number number)) {
            return Optional.of(Finding.of(KEY, Problem.UNKNOWN_FORMAT, String.valueOf(written)));
        }
        double format = number.doubleValue();
        if (format == ScenarioKeys.FORMAT) {
            return Optional.empty();
        }
        boolean newer = format > ScenarioKeys.FORMAT && format == Math.rint(format);
        return Optional.of(
                newer
                        ? Finding.of(KEY, Problem.NEWER_FORMAT, written.toString(), String.valueOf(ScenarioKeys.FORMAT))
                        : Finding.of(KEY, Problem.UNKNOWN_FORMAT, written.toString()));
    }

    /**
     * Whether the rest of the file can be judged: not that of a newer format, whose rules we do not
     * know, nor a file that has nothing of a scenario.
     */
    static boolean isWorthReading(Node.Group file, Optional<Finding> wrong) {
        return wrong.isEmpty()
                || (wrong.get().problem() != Problem.NEWER_FORMAT
                        && !Collections.disjoint(file.entries().keySet(), ScenarioKeys.TOP_ORDER));
    }
}
