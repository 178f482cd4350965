package org.sagwise.cli;

import java.util.List;
import java.util.Optional;
import org.sagwise.scenario.Scenario;

/**
 * What came of a file that a call named.
 *
 * @param name as it was named
 * @param scenario what it held; empty if it could not be read
 * @param problems everything that is wrong with it, in words; empty if nothing is
 */
record GivenScenario(String name, Optional<Scenario> scenario, List<FileProblem> problems) {

    GivenScenario {
        problems = List.copyOf(problems);
    }

    /**
     * One thing that is wrong.
     *
     * @param place where in the file; empty for the whole of it
     * @param text where, what, and what would be right
     */
    record FileProblem(String place, String text) {}

    static GivenScenario of(String name, Scenario scenario) {
        return new GivenScenario(name, Optional.of(scenario), List.of());
    }

    static GivenScenario refused(String name, List<FileProblem> problems) {
        return new GivenScenario(name, Optional.empty(), problems);
    }

    static GivenScenario unreadable(String name, String text) {
        return refused(name, List.of(new FileProblem("", text)));
    }

    /** Tells everything that is wrong; silent if nothing is. */
    void complain(CallContext call) {
        String shown = new ScenarioInput(call).shown(name);
        if (problems.size() == 1) {
            call.problem(call.texts().say("wrong.line", shown, problems.get(0).text()));
        } else if (!problems.isEmpty()) {
            call.problem(call.texts().say("wrong.file", shown, problems.size()));
            problems.forEach(problem -> call.problem("  " + problem.text()));
        }
    }
}
