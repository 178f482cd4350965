package org.sagwise.ui;

import static java.util.concurrent.CompletableFuture.runAsync;
import static java.util.concurrent.CompletableFuture.supplyAsync;

import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
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
import org.sagwise.ui.text.Fonts;

/**
 * What a window needs and need not be made on its thread: most of it while JavaFX starts, which takes a third of a
 * second of one processor and leaves the others to this.
 */
public final class Overture {

    private static final CompletableFuture<Catalogue> CATALOGUE =
            supplyAsync(CatalogueLoader::builtIn, Overture::beside);
    private static final CompletableFuture<List<Example>> EXAMPLES =
            supplyAsync(Overture::readExamples, Overture::beside);
    private static final CompletableFuture<List<byte[]>> ICONS = supplyAsync(WindowIcons::painted, Overture::beside);

    private Overture() {}

    /** What takes a JavaFX that has started. */
    private static final class Typeface {
        private static final CompletableFuture<?> LOADED = runAsync(Fonts::load, Overture::beside);
    }

    /** Begins it, if it has not begun. */
    public static void begin() {
        CATALOGUE.isDone();
    }

    /** Begins the rest, once JavaFX has started. */
    public static void goOn() {
        Typeface.LOADED.isDone();
    }

    static void awaitTypeface() {
        Typeface.LOADED.join();
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
        List<Example> examples = ExampleBenches.all(new ScenarioReader(catalogue()));
        // The window waits for the examples, and takes a while to come to the bench that lies on it.
        beside(() -> ExampleBenches.named(DemoScenarios.OPENING, examples).ifPresent(Overture::rehearse));
        return examples;
    }

    /** What is done for the first bench is dear the first time and cheap the second, whoever does it. */
    private static void rehearse(Example example) {
        Scenario opening = example.scenario(Locale.ENGLISH);
        Assessment.of(opening, catalogue());
        BenchLayout.of(opening);
    }

    private static void beside(Runnable work) {
        Thread thread = new Thread(work, "overture");
        thread.setDaemon(true);
        thread.start();
    }
}
