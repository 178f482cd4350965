package org.sagwise.cli;

import org.sagwise.quantity.Durations;
import org.sagwise.quantity.Parsed;
import org.sagwise.quantity.QuantityParser;
import org.sagwise.quantity.Unit;
import org.sagwise.run.RunPlan;
import org.sagwise.run.RunSettings;
import org.sagwise.run.Runner;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** Reads what a call asks of a run. */
final class RunRequest {

    private static final String CUTOFF = "cutoff";

    private static final int MOST_CYCLES = 5000;

    private final CallContext call;
    private final CommandLine line;

    /**
     * @param line whose call it is, for messages
     */
    RunRequest(CallContext call, CommandLine line) {
        this.call = call;
        this.line = line;
    }

    /** The plan in these words; null where nothing was said. */
    RunPlan plan(String on, String off, boolean hold, String until) {
        if (hold && (on != null || off != null)) {
            throw wrong("--hold", call.texts().say("run.hold-alone"));
        }
        RunPlan usual = hold ? RunPlan.held() : RunPlan.USUAL;
        double onS = on == null ? usual.onS() : seconds("--on", on);
        double offS = off == null ? usual.offS() : seconds("--off", off);
        if (onS == 0) {
            throw wrong("--on", call.texts().say("run.no-press"));
        }
        RunPlan plan = RunPlan.presses(onS, offS);
        if (until == null || until.equals(CUTOFF)) {
            return plan;
        }
        double untilS = seconds("--until", until);
        if (untilS == 0 || untilS > Runner.LONGEST_S) {
            throw wrong(
                    "--until", call.texts().say("run.too-long", call.format().print(Runner.LONGEST_S, Unit.SECOND)));
        }
        return plan.until(untilS);
    }

    /** The plan that leads to a moment and stops there. */
    RunPlan moment(String on, String off, String at) {
        double atS = seconds("--at", at);
        if (atS == 0) {
            throw wrong("--at", call.texts().say("moment.zero"));
        }
        return plan(on, off, false, null).until(atS);
    }

    /** The settings with this cut-off; null leaves each cell its own. */
    RunSettings settings(String cutoff) {
        if (cutoff == null) {
            return RunSettings.USUAL;
        }
        Parsed parsed = new QuantityParser(call.locale()).parse(cutoff, Unit.VOLT);
        return RunSettings.USUAL.withCutoffV(value("--cutoff", parsed));
    }

    /** Refuses a number of cycles that cannot be told. */
    void checkCycles(int cycles, RunPlan plan) {
        if (cycles < 0 || cycles > MOST_CYCLES) {
            throw wrong("--cycles", call.texts().say("run.cycles-range", MOST_CYCLES));
        }
        if (cycles > 0 && plan.untilS().isPresent()) {
            throw wrong("--cycles", call.texts().say("run.cycles-until"));
        }
    }

    private double seconds(String option, String text) {
        double seconds = value(option, Durations.parse(text, call.locale()));
        if (seconds > Runner.LONGEST_S) {
            String longest = call.format().print(Runner.LONGEST_S, Unit.SECOND);
            throw wrong(option, call.texts().say("run.too-long", longest));
        }
        return seconds;
    }

    private double value(String option, Parsed parsed) {
        if (parsed instanceof Parsed.Value value) {
            return value.amount();
        }
        throw wrong(option, ((Parsed.Refused) parsed).text(call.locale()));
    }

    ParameterException wrong(String option, String why) {
        return new ParameterException(line, option + ": " + why);
    }
}
