package org.sagwise.cli;

import org.sagwise.reading.Bench;
import org.sagwise.reading.Press;
import org.sagwise.run.Outlook;
import org.sagwise.run.RunPlan;
import org.sagwise.run.RunResult;
import org.sagwise.run.RunSettings;

import java.util.List;
import java.util.stream.Stream;

/**
 * A run with all that is told about it.
 *
 * @param bench what was run
 * @param plan how
 * @param settings with which cut-off
 * @param result what came of it
 * @param outlooks what goes wrong if nobody does anything; none where nothing does
 */
record RunReport(
        Bench bench, RunPlan plan, RunSettings settings, RunResult result, List<Outlook> outlooks) {

    static RunReport of(Bench bench, RunPlan plan, RunSettings settings, RunResult result) {
        Outlook letGo = Outlook.of(bench, settings, Press.RELEASED);
        Outlook held = Outlook.of(bench, settings, Press.HELD);
        boolean same = letGo.tellsAllOf(held);
        List<Outlook> telling =
                Stream.of(letGo, held)
                        .filter(outlook -> !outlook.stages().isEmpty())
                        .filter(outlook -> !same || outlook == letGo)
                        .toList();
        return new RunReport(bench, plan, settings, result, telling);
    }
}
