package org.sagwise.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.LessonBundle;
import org.sagwise.file.LessonReader;
import org.sagwise.file.LessonReading;
import org.sagwise.file.LessonSource;
import org.sagwise.lesson.MoveLint;
import org.sagwise.part.Catalogue;
import org.sagwise.scenario.Finding;
import org.sagwise.web.LessonPageWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a lesson as a live page: one file in which it is played, on a phone as on a desk. */
@Command(name = "page", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class LessonPageCommand implements Callable<Integer> {

    private final CallContext call;

    @Parameters(paramLabel = "LESSON", descriptionKey = "lesson.one")
    private String name;

    @Option(names = "-o", paramLabel = "OUT", required = true, descriptionKey = "page.out")
    private String out;

    @Mixin
    private Overwriting overwriting;

    LessonPageCommand(CallContext call) {
        this.call = call;
    }

    @Override
    public Integer call() throws IOException {
        List<LessonSource> sources = new LessonInput(call).find(List.of(name));
        if (sources.isEmpty()) {
            return ExitStatus.WRONG;
        }
        Catalogue catalogue = CatalogueLoader.builtIn();
        LessonReading reading = new LessonReader(catalogue).read(sources.get(0));
        List<Finding> faults = new ArrayList<>(reading.faults());
        reading.lesson().stream()
                .flatMap(lesson -> MoveLint.check(lesson, catalogue).stream())
                .map(reading::locate)
                .forEach(faults::add);
        if (!faults.isEmpty()) {
            LessonInput.complain(call, reading.id(), faults);
            return ExitStatus.WRONG;
        }
        Optional<byte[]> engine = PageEngine.read();
        if (engine.isEmpty()) {
            call.problem(call.texts().say("page.no-engine"));
            return ExitStatus.FAILED;
        }
        String page = new LessonPageWriter(engine.get(), call.locale())
                .write(reading.lesson().orElseThrow(), LessonBundle.write(sources.get(0)), Optional.empty());
        return new OutputFile(call, out, overwriting, List.of()).write(page);
    }
}
