package org.sagwise.cli;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Optional;
import org.sagwise.assessment.Assessment;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.LessonFolder;
import org.sagwise.file.LessonSource;
import org.sagwise.file.ScenarioReader;
import org.sagwise.part.NearMiss;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;

/** Opens the window, or says why there is none and prints the readings instead. */
final class Opening {

    private final CallContext call;

    Opening(CallContext call) {
        this.call = call;
    }

    /**
     * Opens the bench.
     *
     * @param file what the call named, or null
     * @param verbs words that may have been meant instead of a file
     * @return the exit status
     */
    int open(String file, Collection<String> verbs) {
        Optional<String> named = Optional.ofNullable(file);
        Optional<Path> lessons = named.flatMap(Opening::lessonFolder);
        Optional<String> demo = named.filter(new ScenarioInput(call)::isDemo);
        boolean isGood = lessons.isPresent() || demo.isPresent();
        Optional<String> wrong = isGood ? Optional.empty() : named.flatMap(name -> wrongName(name, verbs));
        if (wrong.isPresent()) {
            call.problem(wrong.get());
            return ExitStatus.WRONG;
        }
        Optional<WindowObstacle> obstacle = call.opener().obstacle();
        if (obstacle.isPresent()) {
            call.problem(obstacle.get().text(call.locale()));
            return lessons.isPresent() ? tryInstead(lessons.get()) : printInstead(named);
        }
        if (named.equals(Optional.of(ScenarioInput.STANDARD_INPUT))) {
            call.problem(call.texts().say("wrong.standard-input-window"));
            return ExitStatus.WRONG;
        }
        return call.opener()
                .open(new WindowRequest(
                        named.filter(name -> demo.isEmpty()).map(Path::of), demo, Optional.empty(), call.asked()));
    }

    /** Opens the bench that a line of words says. */
    int openWords(String line) {
        GivenScenario given = new ScenarioInput(call).readWords(line);
        if (given.scenario().isEmpty()) {
            given.complain(call);
            return ExitStatus.WRONG;
        }
        Optional<WindowObstacle> obstacle = call.opener().obstacle();
        if (obstacle.isPresent()) {
            call.problem(obstacle.get().text(call.locale()));
            call.problem(call.texts().say("no-window.file", GivenFile.OF));
            print(given.scenario().get());
            return ExitStatus.DONE;
        }
        return call.opener()
                .open(new WindowRequest(Optional.empty(), Optional.empty(), Optional.of(line), call.asked()));
    }

    /** A folder with lessons, if the call names one. */
    private static Optional<Path> lessonFolder(String name) {
        try {
            return Optional.of(Path.of(name)).filter(path -> !name.isBlank() && LessonFolder.isOne(path));
        } catch (InvalidPathException wrong) {
            return Optional.empty();
        }
    }

    /** Whoever wants to see lessons wants to know whether they hold. */
    private int tryInstead(Path folder) {
        call.problem(call.texts().say("no-window.lessons", folder));
        try {
            return new LessonLintCommand(call)
                    .tryOut(LessonFolder.lessons(folder).stream()
                            .map(LessonSource::ofFolder)
                            .toList());
        } catch (IOException failure) {
            call.problem(call.texts().say("wrong.unreadable", failure.getMessage()));
            return ExitStatus.WRONG;
        }
    }

    private Optional<String> wrongName(String name, Collection<String> verbs) {
        Optional<String> wrong = new ScenarioInput(call).wrongName(name);
        Optional<String> verb = NearMiss.of(name, verbs).stream().findFirst();
        return wrong.isPresent() && verb.isPresent()
                ? Optional.of(call.texts().say("wrong.no-such-verb", name, verb.get()))
                : wrong.map(text -> line(name, text));
    }

    private String line(String name, String text) {
        return call.texts().say("wrong.line", new ScenarioInput(call).shown(name), text);
    }

    private int printInstead(Optional<String> named) {
        if (named.isEmpty()) {
            call.problem(call.texts().say("no-window.opening"));
            print(opening());
            return ExitStatus.DONE;
        }
        GivenScenario given = new ScenarioInput(call).read(named.get());
        if (given.scenario().isEmpty()) {
            given.complain(call);
            return ExitStatus.WRONG;
        }
        call.problem(call.texts().say("no-window.file", new ScenarioInput(call).shown(named.get())));
        print(given.scenario().get());
        return ExitStatus.DONE;
    }

    private Scenario opening() {
        return new ScenarioReader(CatalogueLoader.builtIn())
                .read(DemoScenarios.bytes(DemoScenarios.OPENING, call.locale()))
                .scenario()
                .orElseThrow();
    }

    private void print(Scenario scenario) {
        Assessment assessment = Assessment.of(scenario, CatalogueLoader.builtIn());
        new AssessmentText(call).print(assessment.with(Press.HELD));
    }
}
