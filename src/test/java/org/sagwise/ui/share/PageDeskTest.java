package org.sagwise.ui.share;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ScenarioReader;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.kit.LatestTask;
import org.sagwise.ui.kit.Threads;
import org.sagwise.ui.text.Wording;

class PageDeskTest {

    private static final Wording WORDING = Wording.in(Locale.ENGLISH);

    private final List<String> said = new ArrayList<>();

    @TempDir
    private Path folder;

    private PageDesk desk(Optional<String> page) {
        LivePages pages = new LivePages() {
            @Override
            public boolean isHere() {
                return page.isPresent();
            }

            @Override
            public Optional<String> write(Scenario scenario, Locale locale) {
                return page;
            }
        };
        return new PageDesk(pages, new LatestTask(new Threads(Runnable::run, Runnable::run)));
    }

    private static Scenario demo(String name) {
        return new ScenarioReader(CatalogueLoader.builtIn())
                .read(DemoScenarios.bytes(name))
                .scenario()
                .orElseThrow();
    }

    @Test
    void write_aBench_isSavedAndRememberedForThatBenchAlone() throws IOException {
        PageDesk desk = desk(Optional.of("<p>Ω"));
        Scenario bench = demo("two-in-a-row");

        desk.write(folder.resolve("two.html"), bench, WORDING, said::add);

        assertEquals("<p>Ω", Files.readString(folder.resolve("two.html")));
        assertTrue(said.get(0).startsWith("Saved as two.html"), said.toString());
        assertEquals(Optional.of("two.html"), desk.nameFor(bench));
        assertEquals(Optional.empty(), desk.nameFor(demo("two-by-two")));
    }

    @Test
    void write_whereNothingCanBeWritten_saysWhyAndRemembersNothing() {
        PageDesk desk = desk(Optional.of("<p>"));
        Scenario bench = demo("two-in-a-row");

        desk.write(folder.resolve("no/such/folder/two.html"), bench, WORDING, said::add);

        assertFalse(said.get(0).startsWith("Saved"), said.toString());
        assertEquals(Optional.empty(), desk.nameFor(bench));
    }

    @Test
    void write_withoutTheScript_saysHowToGetIt() {
        PageDesk desk = desk(Optional.empty());

        desk.write(folder.resolve("two.html"), demo("two-in-a-row"), WORDING, said::add);

        assertTrue(said.get(0).contains("./sagwise page"), said.toString());
        assertFalse(Files.exists(folder.resolve("two.html")));
    }

    /** The page that nobody waits for any more is not written over what is there. */
    @Test
    void stop_whileThePageIsMade_writesNothingAndSaysSo() throws IOException {
        List<Runnable> behind = new ArrayList<>();
        Path file = folder.resolve("two.html");
        AtomicReference<PageDesk> desk = new AtomicReference<>();
        LivePages slow = new LivePages() {
            @Override
            public boolean isHere() {
                return true;
            }

            @Override
            public Optional<String> write(Scenario scenario, Locale locale) {
                desk.get().stop();
                return Optional.of("<p>");
            }
        };
        desk.set(new PageDesk(slow, new LatestTask(new Threads(behind::add, Runnable::run))));

        desk.get().write(file, demo("two-in-a-row"), WORDING, said::add);
        assertEquals(Optional.of(file), desk.get().underWayProperty().get());
        behind.forEach(Runnable::run);

        assertFalse(Files.exists(file));
        assertEquals(List.of("Stopped."), said);
        assertEquals(Optional.empty(), desk.get().underWayProperty().get());
    }
}
