package org.sagwise.ui.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.sagwise.fixture.Packs;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.kit.Threads;
import org.sagwise.ui.settings.LooksModel;
import org.sagwise.ui.settings.Preferences;
import org.sagwise.ui.settings.PreferencesModel;
import org.sagwise.ui.settings.SettingsStore;

class LargeBenchOpeningTest {

    private static final Scenario SMALL = Packs.of(1, 2);
    private static final Scenario LARGE = Packs.of(1, LargeBenchOpening.QUICK_PARTS);
    private static final Scenario OTHER = Packs.of(1, LargeBenchOpening.QUICK_PARTS + 1);

    private final Deque<Runnable> behind = new ArrayDeque<>();
    private final Layouts layouts = new Layouts();
    private final LargeBenchOpening opening = new LargeBenchOpening(
            layouts, new LooksModel(new PreferencesModel(new NoSettings())), new Threads(behind::add, Runnable::run));
    private final List<Scenario> opened = new ArrayList<>();

    @Test
    void whenReady_smallBench_isReadyAtOnce() {
        ask(SMALL);

        assertEquals(List.of(SMALL), opened);
        assertTrue(behind.isEmpty());
    }

    @Test
    void whenReady_largeBench_isSetOutBehindTheScenesFirst() {
        ask(LARGE);
        assertEquals(List.of(), opened);
        assertEquals(Optional.of(LARGE), opening.underWayProperty().get());

        behind.remove().run();
        assertEquals(List.of(LARGE), opened);
        assertEquals(Optional.empty(), opening.underWayProperty().get());
        BenchLayout layout = layouts.of(asked(LARGE), 400, 300);
        assertSame(layout, layouts.of(asked(LARGE), 1200, 700));
    }

    @Test
    void callOff_whileSettingOut_opensNothing() {
        ask(LARGE);
        opening.callOff();
        behind.remove().run();

        assertEquals(List.of(), opened);
        assertEquals(Optional.empty(), opening.underWayProperty().get());
    }

    @Test
    void whenReady_askedForAnother_opensTheLastOnly() {
        ask(LARGE);
        ask(OTHER);
        behind.remove().run();
        assertEquals(Optional.of(OTHER), opening.underWayProperty().get());
        behind.remove().run();

        assertEquals(List.of(OTHER), opened);
    }

    private void ask(Scenario scenario) {
        opening.whenReady(scenario, () -> opened.add(scenario));
    }

    private static Layouts.Asked asked(Scenario scenario) {
        return new Layouts.Asked(scenario, 1, false, Drawing.BENCH);
    }

    private static final class NoSettings implements SettingsStore {

        @Override
        public Preferences load() {
            return Preferences.fresh();
        }

        @Override
        public void save(Preferences preferences) {}
    }
}
