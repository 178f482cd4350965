package org.sagwise.cli;

import org.sagwise.assessment.Assessment;
import org.sagwise.assessment.Moment;
import org.sagwise.run.RunPlan;
import org.sagwise.run.RunState;
import org.sagwise.run.Runner;
import picocli.CommandLine;
import picocli.CommandLine.Option;

/** Options that ask for another moment than the start, and how the button is pressed until then. */
final class MomentOptions {

    @Option(names = "--at", paramLabel = "TIME", descriptionKey = "moment.at")
    private String at;

    @Option(names = "--on", paramLabel = "TIME", descriptionKey = "run.on")
    private String on;

    @Option(names = "--off", paramLabel = "TIME", descriptionKey = "run.off")
    private String off;

    /** How to get there; null for the start. */
    RunPlan plan(CallContext call, CommandLine line) {
        RunRequest request = new RunRequest(call, line);
        if (at != null) {
            return request.moment(on, off, at);
        }
        if (on != null || off != null) {
            throw request.wrong(on != null ? "--on" : "--off", call.texts().say("moment.no-time"));
        }
        return null;
    }

    /** The moment that a plan leads to, or at which the run is over before. */
    static Moment reached(Assessment assessment, RunPlan plan) {
        if (plan == null) {
            return Moment.start(assessment);
        }
        RunState last = Runner.run(assessment.bench(), plan).last();
        return new Moment(assessment.at(last.states(), last.press()), last.timeS());
    }
}
