package org.sagwise.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.LessonLibrary;
import org.sagwise.file.LessonReader;
import org.sagwise.lesson.Lesson;
import org.sagwise.text.Texts;
import picocli.CommandLine.Command;

/** Prints the running order: every lesson with its evening and its minutes. */
@Command(name = "list", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class LessonListCommand implements Callable<Integer> {

    private final CallContext call;

    LessonListCommand(CallContext call) {
        this.call = call;
    }

    @Override
    public Integer call() {
        LessonReader reader = new LessonReader(CatalogueLoader.builtIn());
        List<Lesson> lessons = LessonLibrary.ids().stream()
                .flatMap(id -> reader.read(LessonLibrary.source(id)).lesson().stream())
                .toList();
        Texts texts = Texts.in("lesson-cli", call.locale());
        int evening = 0;
        for (Lesson lesson : lessons) {
            if (lesson.evening() != evening) {
                evening = lesson.evening();
                call.result(texts.say("list.evening", evening, minutes(lessons, evening)));
            }
            call.result(texts.say("list.lesson", lesson.id(), lesson.title().in(call.locale()), lesson.minutes()));
            Paragraph.lines(lesson.goal().in(call.locale()), "      ").forEach(call::result);
        }
        return ExitStatus.DONE;
    }

    private static int minutes(List<Lesson> lessons, int evening) {
        return lessons.stream()
                .filter(lesson -> lesson.evening() == evening)
                .mapToInt(Lesson::minutes)
                .sum();
    }
}
