package org.sagwise.ui;

import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import org.sagwise.assessment.Assessment;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ScenarioReader;
import org.sagwise.part.Catalogue;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.shell.WindowIcons;
import org.sagwise.ui.start.Example;
import org.sagwise.ui.start.ExampleBenches;

/**
 * What a window needs and JavaFX has no part in, made on threads of its own while JavaFX starts: that takes
 * a third of a second of one processor, and leaves the others to this.
 */
public final class Overture {

    private static final CompletableFuture<Catalogue> CATALOGUE = beside(CatalogueLoader::builtIn);
    private static final CompletableFuture<List<Example>> EXAMPLES = beside(Overture::readExamples);
    private static final CompletableFuture<List<byte[]>> ICONS = beside(WindowIcons::painted);

    private Overture() {}

    /** Begins it, if it has not begun. */
    public static void begin() {
        CATALOGUE.isDone();
    }

    static Catalogue catalogue() {
        return CATALOGUE.join();
    }

    static List<Example> examples() {
        return EXAMPLES.join();
    }

    static List<byte[]> icons() {
        return ICONS.join();
    }

    private static List<Example> readExamples() {
        ScenarioReader reader = new ScenarioReader(catalogue());
        rehearse(reader);
        return ExampleBenches.all(reader);
    }

    /** What is done for the first bench is dear the first time and cheap the second, whoever does it. */
    private static void rehearse(ScenarioReader reader) {
        Scenario opening = reader.read(DemoScenarios.bytes(DemoScenarios.OPENING, Locale.ENGLISH))
                .scenario()
                .orElseThrow();
        Assessment.of(opening, catalogue());
        BenchLayout.of(opening);
    }

    private static <T> CompletableFuture<T> beside(Supplier<T> work) {
        CompletableFuture<T> made = new CompletableFuture<>();
        return made.completeAsync(work, task -> {
            Thread thread = new Thread(task, "overture");
            thread.setDaemon(true);
            thread.start();
        });
    }
}
