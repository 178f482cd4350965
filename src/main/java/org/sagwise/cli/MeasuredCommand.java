package org.sagwise.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.sagwise.file.ScenarioWriter;
import org.sagwise.plan.Measured;
import org.sagwise.plan.Measurement;
import org.sagwise.plan.MeterCheck;
import org.sagwise.plan.MeterStep;
import org.sagwise.quantity.Measure;
import org.sagwise.quantity.Unit;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Makes a scenario from what a meter shows at a real bench. */
@Command(name = "measured", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class MeasuredCommand implements Callable<Integer> {

    private final CallContext call;

    @Spec
    private CommandSpec spec;

    @Option(names = "--rest", paramLabel = "V", required = true, descriptionKey = "measured.rest")
    private String rest;

    @Option(names = "--cell", paramLabel = "V", required = true, descriptionKey = "measured.cell")
    private String cell;

    @Option(names = "--coil", paramLabel = "V", required = true, descriptionKey = "measured.coil")
    private String coil;

    @Option(names = "--ohm", paramLabel = "OHM", required = true, descriptionKey = "measured.ohm")
    private String ohm;

    @Option(names = "--volts-step", paramLabel = "V", descriptionKey = "measured.volts-step")
    private String voltsStep;

    @Option(names = "--ohm-step", paramLabel = "OHM", descriptionKey = "measured.ohm-step")
    private String ohmStep;

    @Option(names = "--limit", paramLabel = "A", descriptionKey = "measured.limit")
    private String limit;

    @Option(names = "--capacity", paramLabel = "MAH", descriptionKey = "measured.capacity")
    private String capacity;

    @Option(names = "-o", paramLabel = "FILE", descriptionKey = "measured.out")
    private String out;

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    @Mixin
    private Overwriting overwriting;

    MeasuredCommand(CallContext call) {
        this.call = call;
    }

    @Override
    public Integer call() {
        MeterCheck check = check();
        double limitA = limit == null ? Double.NaN : positive("--limit", limit, Unit.AMPERE);
        double capacityMah = capacity == null ? Measured.USUAL_CAPACITY_MAH : milliampereHours();
        Measurement.Answer answer = Measurement.of(check);
        if (answer instanceof Measurement.Answer.Refused refused) {
            refused.contradictions().forEach(which -> call.problem(sentence(which, check)));
            return ExitStatus.WRONG;
        }
        Measured measured = ((Measurement.Answer.Agreed) answer).measured();
        Scenario scenario = measured.scenario(plan().say("title"), capacityMah, limitA);
        if (out != null && OutputFile.isStandardOutput(out)) {
            if (json) {
                throw amounts().wrong(call.texts().say("wrong.one-of", "-o -, --json"));
            }
            call.out().print(JsonWriter.unsteered(ScenarioWriter.write(scenario)));
            return ExitStatus.DONE;
        }
        if (out != null && !isSaved(scenario)) {
            return ExitStatus.WRONG;
        }
        MeasuredReport report = new MeasuredReport(measured, scenario, limit == null || capacity == null);
        if (json) {
            MeasuredJson.write(call, report);
        } else {
            new MeasuredText(call, report).lines().forEach(call::result);
        }
        return ExitStatus.DONE;
    }

    private MeterCheck check() {
        double restV = value("--rest", rest, Unit.VOLT);
        double cellV = value("--cell", cell, Unit.VOLT);
        double coilV = value("--coil", coil, Unit.VOLT);
        double coilOhm = value("--ohm", ohm, Unit.OHM);
        double stepV = voltsStep != null
                ? positive("--volts-step", voltsStep, Unit.VOLT)
                : Math.max(MeterStep.of(rest, restV), Math.max(MeterStep.of(cell, cellV), MeterStep.of(coil, coilV)));
        double stepOhm = ohmStep != null ? positive("--ohm-step", ohmStep, Unit.OHM) : MeterStep.of(ohm, coilOhm);
        return new MeterCheck(restV, cellV, coilV, coilOhm, stepV, stepOhm);
    }

    private Amounts amounts() {
        return new Amounts(call, spec);
    }

    private double milliampereHours() {
        return 1000 * amounts().above("--capacity", capacity, Measure.of(Unit.AMPERE_HOUR, "mAh"));
    }

    private double value(String option, String text, Unit unit) {
        return amounts().any(option, text, Measure.of(unit));
    }

    private double positive(String option, String text, Unit unit) {
        return amounts().above(option, text, unit);
    }

    private String sentence(Measurement.Contradiction which, MeterCheck check) {
        return plan().say(
                        "contradiction." + Words.of(which),
                        call.format().print(check.restV(), Unit.VOLT),
                        call.format().print(check.cellV(), Unit.VOLT),
                        call.format().print(check.coilV(), Unit.VOLT),
                        call.format().print(check.coilOhm(), Unit.OHM));
    }

    private Texts plan() {
        return Texts.in("plan", call.locale());
    }

    private boolean isSaved(Scenario scenario) {
        return new OutputFile(call, out, overwriting, List.of()).write(ScenarioWriter.write(scenario))
                == ExitStatus.DONE;
    }
}
