package org.sagwise.cli;

import org.sagwise.file.CatalogueLoader;
import org.sagwise.reading.Bench;
import org.sagwise.report.RunCsv;
import org.sagwise.run.RunPlan;
import org.sagwise.run.RunResult;
import org.sagwise.run.RunSettings;
import org.sagwise.run.Runner;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.concurrent.Callable;

/** Simulates a scenario in time and tells what came of it. */
@Command(name = "run", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class RunCommand implements Callable<Integer> {

    private final CallContext call;

    @Spec private CommandSpec spec;

    @Parameters(paramLabel = "FILE", descriptionKey = "file")
    private String file;

    @Option(names = "--on", paramLabel = "TIME", descriptionKey = "run.on")
    private String on;

    @Option(names = "--off", paramLabel = "TIME", descriptionKey = "run.off")
    private String off;

    @Option(names = "--hold", descriptionKey = "run.hold")
    private boolean hold;

    @Option(names = "--until", paramLabel = "cutoff|TIME", descriptionKey = "run.until")
    private String until;

    @Option(names = "--cutoff", paramLabel = "VOLTS", descriptionKey = "run.cutoff")
    private String cutoff;

    @Option(names = "--cycles", paramLabel = "N", descriptionKey = "run.cycles")
    private int cycles;

    @Option(names = "--csv", paramLabel = "OUT", descriptionKey = "run.csv")
    private String csv;

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    RunCommand(CallContext call) {
        this.call = call;
    }

    @Override
    public Integer call() {
        RunRequest request = new RunRequest(call, spec.commandLine());
        RunPlan plan = request.plan(on, off, hold, until);
        RunSettings settings = request.settings(cutoff);
        request.checkCycles(cycles, plan);
        GivenScenario given = new ScenarioInput(call).read(file);
        if (given.scenario().isEmpty()) {
            given.complain(call);
            return ExitStatus.WRONG;
        }
        Bench bench = Bench.of(given.scenario().get(), CatalogueLoader.builtIn());
        RunResult result;
        try (RunTicker ticker = new RunTicker(call)) {
            result = Runner.run(bench, plan, settings, ticker);
        }
        if (csv != null && !isWritten(result)) {
            return ExitStatus.WRONG;
        }
        RunReport report = RunReport.of(bench, plan, settings, result, cycles);
        if (json) {
            RunJson.write(call, report);
        } else {
            RunText.lines(call, report).forEach(call::result);
        }
        return ExitStatus.DONE;
    }

    private boolean isWritten(RunResult result) {
        try {
            Files.writeString(Path.of(csv), RunCsv.of(result.trace()));
            return true;
        } catch (IOException | InvalidPathException failure) {
            call.problem(call.texts().say("run.csv-failed", csv, failure.getMessage()));
            return false;
        }
    }
}
