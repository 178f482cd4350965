package org.sagwise.ui.sound;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.sagwise.assessment.Assessment;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ScenarioReader;
import org.sagwise.part.Catalogue;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.document.FireButtonState.Hold;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.settings.Preferences;
import org.sagwise.ui.settings.PreferencesModel;
import org.sagwise.ui.settings.SettingsStore;
import org.sagwise.ui.settings.Sound;

class BenchSoundsTest implements Speaker {

    private final Catalogue catalogue = CatalogueLoader.builtIn();
    private final BenchModel bench =
            new BenchModel(scenario -> Assessment.of(scenario, catalogue), demo("two-in-a-row"));
    private final PreferencesModel preferences = new PreferencesModel(new Forgetful());
    private final Subscriptions subscriptions = new Subscriptions();
    private final List<double[]> played = new ArrayList<>();
    private double humming;

    BenchSoundsTest() {
        new BenchSounds(bench, preferences, this, subscriptions);
    }

    private static final class Forgetful implements SettingsStore {

        @Override
        public Preferences load() {
            return Preferences.fresh();
        }

        @Override
        public void save(Preferences changed) {
            // Nothing is kept.
        }
    }

    private Scenario demo(String name) {
        return new ScenarioReader(catalogue)
                .read(DemoScenarios.bytes(name))
                .scenario()
                .orElseThrow()
                .released();
    }

    @Override
    public void play(double[] samples) {
        played.add(samples);
    }

    @Override
    public void hum(double loudness) {
        humming = loudness;
    }

    private void turnOn() {
        preferences.change(now -> now.withSound(Sound.ON));
    }

    @Test
    void atFirst_whateverHappens_isSilent() {
        bench.button().press(Hold.KEY);
        bench.open(demo("side-by-side-one-reversed"));

        assertTrue(played.isEmpty());
        assertEquals(0, humming);
    }

    @Test
    void button_pressedAndLetGo_clicksAndHumsMeanwhile() {
        turnOn();
        bench.button().press(Hold.KEY);
        assertTrue(humming > 0);
        bench.button().release(Hold.KEY);

        assertEquals(0, humming);
        assertEquals(2, played.size());
        assertArrayEquals(Tones.click(), played.get(0));
    }

    @Test
    void danger_thatIsNew_isToldOnce() {
        turnOn();
        bench.open(demo("side-by-side-one-reversed"));
        bench.edit("title", scenario -> scenario.withTitle("another"));

        assertEquals(1, played.size());
        assertArrayEquals(Tones.warning(), played.get(0));
    }

    @Test
    void subscriptions_closed_endTheHum() {
        turnOn();
        bench.button().press(Hold.KEY);
        subscriptions.close();

        assertEquals(0, humming);
    }
}
