package org.sagwise.cli;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.reading.Bench;
import org.sagwise.report.RunCsv;
import org.sagwise.run.RunPlan;
import org.sagwise.run.RunResult;
import org.sagwise.run.RunSettings;
import org.sagwise.run.Runner;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Simulates a scenario in time and tells what came of it. */
@Command(name = "run", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class RunCommand implements Callable<Integer> {

    private static final Set<String> CSV_ENDINGS = Set.of("csv", "txt", "");

    private final CallContext call;

    @Spec
    private CommandSpec spec;

    @Mixin
    private GivenFile source;

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

    @Mixin
    private Overwriting overwriting;

    RunCommand(CallContext call) {
        this.call = call;
    }

    @Override
    public Integer call() {
        RunRequest request = new RunRequest(call, spec.commandLine());
        RunPlan plan = request.plan(on, off, hold, until);
        RunSettings settings = request.settings(cutoff);
        request.checkCycles(cycles, plan);
        Optional<OutputFile> course = course();
        GivenScenario given = source.read(call);
        if (given.scenario().isEmpty()) {
            given.complain(call);
            return ExitStatus.WRONG;
        }
        Bench bench = Bench.of(given.scenario().get(), CatalogueLoader.builtIn());
        RunResult result = simulated(bench, plan, settings);
        int written = course.map(out -> out.write(RunCsv.of(result.trace()))).orElse(ExitStatus.DONE);
        if (written != ExitStatus.DONE || isCourseInPlaceOfReport()) {
            return written;
        }
        RunReport report = RunReport.of(bench, plan, settings, result, cycles);
        if (json) {
            RunJson.write(call, report);
        } else {
            RunText.lines(call, report).forEach(call::result);
        }
        return ExitStatus.DONE;
    }

    private RunResult simulated(Bench bench, RunPlan plan, RunSettings settings) {
        try (RunTicker ticker = new RunTicker(call)) {
            return Runner.run(bench, plan, settings, ticker);
        }
    }

    /** Where the course goes; told before anything is simulated if it can go nowhere. */
    private Optional<OutputFile> course() {
        if (csv == null) {
            return Optional.empty();
        }
        OutputFile out = new OutputFile(call, csv, overwriting, List.of(source.name()));
        if (!CSV_ENDINGS.contains(OutputFile.ending(csv))) {
            throw wrong(call.texts().say("out.ending", csv, "csv"));
        }
        if (isCourseInPlaceOfReport()) {
            if (json) {
                throw wrong(call.texts().say("wrong.one-of", "--csv -, --json"));
            }
            return Optional.of(out);
        }
        out.wrong().ifPresent(words -> {
            throw wrong(words);
        });
        return Optional.of(out);
    }

    private boolean isCourseInPlaceOfReport() {
        return csv != null && OutputFile.isStandardOutput(csv);
    }

    private ParameterException wrong(String words) {
        return new ParameterException(spec.commandLine(), words);
    }
}
