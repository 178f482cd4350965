package org.sagwise.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.CheckedLesson;
import org.sagwise.file.LessonLibrary;
import org.sagwise.file.LessonSource;
import org.sagwise.scenario.Finding;
import org.sagwise.text.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Tries lessons out: file, texts, and every number and condition by the engine itself. */
@Command(name = "lint", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class LessonLintCommand implements Callable<Integer> {

    private final CallContext call;

    @Parameters(arity = "0..*", paramLabel = "LESSON", descriptionKey = "lessons")
    private List<String> names;

    LessonLintCommand(CallContext call) {
        this.call = call;
    }

    @Override
    public Integer call() {
        List<LessonSource> sources = new LessonInput(call).find(names);
        if (sources.isEmpty()) {
            return ExitStatus.WRONG;
        }
        return tryOut(sources);
    }

    /** Tries lessons out and prints what was found. */
    int tryOut(List<LessonSource> sources) {
        List<CheckedLesson> lessons = CheckedLesson.all(sources, CatalogueLoader.builtIn(), LessonLibrary.ids());
        lessons.forEach(this::print);
        return lessons.stream().allMatch(it -> it.faults().isEmpty()) ? ExitStatus.DONE : ExitStatus.FOUND;
    }

    private void print(CheckedLesson lesson) {
        Texts texts = Texts.in("lesson-cli", call.locale());
        lesson.languagesLeftOut().forEach(code -> call.result(texts.say("lint.one-language", lesson.id(), code)));
        if (lesson.faults().isEmpty()) {
            call.result(texts.say("lint.sound", lesson.id()));
            return;
        }
        call.result(texts.say("lint.faults", lesson.id(), lesson.faults().size()));
        for (Finding fault : lesson.faults()) {
            call.result("  " + fault.text(call.locale()));
        }
    }
}
