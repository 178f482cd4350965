package org.sagwise.cli;

import java.util.concurrent.Callable;
import org.sagwise.assessment.Assessment;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints what can be measured at the instant of firing, and the ledger. */
@Command(name = "readings", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class ReadingsCommand implements Callable<Integer> {

    private final CallContext call;

    @Mixin
    private GivenFile source;

    @ArgGroup
    private Moment moment;

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    /** With the button held or let go; held unless somebody asks. */
    static final class Moment {
        @Option(names = "--fired", descriptionKey = "fired")
        private boolean fired;

        @Option(names = "--rest", descriptionKey = "rest")
        private boolean rest;
    }

    ReadingsCommand(CallContext call) {
        this.call = call;
    }

    @Override
    public Integer call() {
        GivenScenario given = source.read(call);
        if (given.scenario().isEmpty()) {
            given.complain(call);
            return ExitStatus.WRONG;
        }
        Press press = Press.of(moment == null || !moment.rest);
        Assessment assessment = assess(given.scenario().get()).with(press);
        if (json) {
            AssessmentJson.write(call, assessment);
        } else {
            new AssessmentText(call).print(assessment);
        }
        return ExitStatus.DONE;
    }

    private static Assessment assess(Scenario scenario) {
        return Assessment.of(scenario, CatalogueLoader.builtIn());
    }
}
