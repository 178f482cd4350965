package org.sagwise.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.LessonReader;
import org.sagwise.file.LessonReading;
import org.sagwise.file.LessonSource;
import org.sagwise.lesson.Lesson;
import org.sagwise.lesson.MoveLint;
import org.sagwise.part.Catalogue;
import org.sagwise.report.handout.Handout;
import org.sagwise.report.handout.HandoutMaker;
import org.sagwise.scenario.Finding;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes what is printed for a class: sheets with gaps, or the key to them. */
@Command(name = "handout", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class LessonHandoutCommand implements Callable<Integer> {

    private final CallContext call;

    @Spec
    private CommandSpec spec;

    @Parameters(arity = "0..*", paramLabel = "LESSON", descriptionKey = "lessons")
    private List<String> names;

    @Option(names = "--key", descriptionKey = "lesson.key")
    private boolean key;

    @Option(names = "-o", paramLabel = "OUT", required = true, descriptionKey = "lesson.out")
    private String out;

    @Mixin
    private Overwriting overwriting;

    LessonHandoutCommand(CallContext call) {
        this.call = call;
    }

    @Override
    public Integer call() {
        HandoutFile file = new HandoutFile(call, out, overwriting, spec);
        List<LessonSource> sources = new LessonInput(call).find(names);
        List<Handout> handouts = handouts(sources);
        if (handouts.isEmpty() || handouts.size() < sources.size()) {
            return ExitStatus.WRONG;
        }
        return file.write(handouts);
    }

    private List<Handout> handouts(List<LessonSource> sources) {
        Catalogue catalogue = CatalogueLoader.builtIn();
        List<Handout> handouts = new ArrayList<>();
        for (LessonSource source : sources) {
            LessonReading reading = new LessonReader(catalogue).read(source);
            List<Finding> faults = new ArrayList<>(reading.faults());
            reading.lesson().stream()
                    .flatMap(lesson -> MoveLint.check(lesson, catalogue).stream())
                    .map(reading::locate)
                    .forEach(faults::add);
            LessonInput.complain(call, reading.id(), faults);
            for (Lesson lesson : faults.isEmpty() ? reading.lesson().stream().toList() : List.<Lesson>of()) {
                Handout.Kind kind = key ? Handout.Kind.KEY : Handout.Kind.SHEET;
                handouts.add(HandoutMaker.make(lesson, catalogue, call.locale(), kind));
            }
        }
        return handouts;
    }
}
