package org.sagwise.picture;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.sagwise.assessment.Assessment;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ScenarioReader;
import org.sagwise.part.Catalogue;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.layout.Benches;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.scenario.Scenario;

/** Scenes of the demos and of the test benches. */
public final class Scenes {

    public static final Catalogue CATALOGUE = CatalogueLoader.builtIn();

    private Scenes() {}

    /** Every demo and every test bench, by name. */
    public static Map<String, Scenario> scenarios() {
        Map<String, Scenario> scenarios = new LinkedHashMap<>();
        DemoScenarios.names().forEach(name -> scenarios.put(name, demo(name)));
        scenarios.putAll(Benches.all());
        return scenarios;
    }

    public static Scenario demo(String name) {
        return new ScenarioReader(CATALOGUE)
                .read(DemoScenarios.bytes(name))
                .scenario()
                .orElseThrow();
    }

    public static Assessment assess(Scenario scenario) {
        return Assessment.of(scenario, CATALOGUE);
    }

    public static BenchScene of(Scenario scenario, Theme theme) {
        return of(scenario, theme, Locale.ENGLISH, 1);
    }

    public static BenchScene of(Scenario scenario, Theme theme, Locale locale, double textScale) {
        return BenchScene.of(assess(scenario), BenchLayout.of(scenario, textScale), theme, locale);
    }
}
