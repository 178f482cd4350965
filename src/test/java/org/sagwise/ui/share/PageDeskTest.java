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
        return new PageDesk(pages, new LatestTask(new Threads(Runnable::run, Runnable::run)), said::add);
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

        desk.write(folder.resolve("two.html"), bench, WORDING);

        assertEquals("<p>Ω", Files.readString(folder.resolve("two.html")));
        assertTrue(said.get(1).startsWith("Saved as two.html"), said.toString());
        assertEquals(Optional.of("two.html"), desk.nameFor(bench));
        assertEquals(Optional.empty(), desk.nameFor(demo("two-by-two")));
    }

    @Test
    void write_whereNothingCanBeWritten_saysWhyAndRemembersNothing() {
        PageDesk desk = desk(Optional.of("<p>"));
        Scenario bench = demo("two-in-a-row");

        desk.write(folder.resolve("no/such/folder/two.html"), bench, WORDING);

        assertFalse(said.get(1).startsWith("Saved"), said.toString());
        assertEquals(Optional.empty(), desk.nameFor(bench));
    }

    @Test
    void write_withoutTheScript_saysHowToGetIt() {
        PageDesk desk = desk(Optional.empty());

        desk.write(folder.resolve("two.html"), demo("two-in-a-row"), WORDING);

        assertTrue(said.get(1).contains("./sagwise page"), said.toString());
        assertFalse(Files.exists(folder.resolve("two.html")));
    }
}
