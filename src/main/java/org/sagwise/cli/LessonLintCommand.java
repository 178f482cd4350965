package org.sagwise.cli;

import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.LessonFault;
import org.sagwise.file.LessonLibrary;
import org.sagwise.file.LessonReader;
import org.sagwise.file.LessonReading;
import org.sagwise.file.LessonSource;
import org.sagwise.lesson.Lesson;
import org.sagwise.lesson.LessonLint;
import org.sagwise.lesson.LessonSet;
import org.sagwise.part.Catalogue;
import org.sagwise.quantity.Texts;

import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;

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
        Catalogue catalogue = CatalogueLoader.builtIn();
        Map<String, List<LessonFault>> faults = new LinkedHashMap<>();
        Map<String, LessonReading> readings = new LinkedHashMap<>();
        for (LessonSource source : sources) {
            LessonReading reading = new LessonReader(catalogue).read(source);
            readings.put(reading.id(), reading);
            faults.put(reading.id(), new ArrayList<>(reading.faults()));
            reading.lesson()
                    .ifPresent(
                            lesson ->
                                    LessonLint.check(lesson, catalogue).stream()
                                            .map(reading::locate)
                                            .forEach(faults.get(reading.id())::add));
        }
        List<Lesson> lessons =
                readings.values().stream().flatMap(it -> it.lesson().stream()).toList();
        LessonSet.check(lessons, LessonLibrary.ids())
                .forEach(
                        (id, found) ->
                                found.forEach(
                                        it -> faults.get(id).add(readings.get(id).locate(it))));
        faults.forEach(this::print);
        return faults.values().stream().allMatch(List::isEmpty)
                ? ExitStatus.DONE
                : ExitStatus.FOUND;
    }

    private void print(String id, List<LessonFault> faults) {
        Texts texts = Texts.in("lesson-cli", call.locale());
        if (faults.isEmpty()) {
            call.result(texts.say("lint.sound", id));
            return;
        }
        call.result(texts.say("lint.faults", id, faults.size()));
        for (LessonFault fault : faults) {
            call.result("  " + fault.text(call.locale()));
        }
    }
}
