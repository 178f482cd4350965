package org.sagwise.picture.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.RandomScenarios;
import org.sagwise.part.Catalogue;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Placement;
import org.sagwise.scenario.Scenario;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;

/** A hand puts parts wherever it likes, one on another too; every bench can still be shown. */
class PlacedAnywhereTest {

    private static final Catalogue CATALOGUE = CatalogueLoader.builtIn();

    @Property(tries = 300)
    void of_partsPutAnywhere_showsThemAll(@ForAll Random random) {
        Scenario scenario = new RandomScenarios(random, CATALOGUE).scenario();
        Map<String, Placement> places = new LinkedHashMap<>();
        for (Part part : scenario.parts()) {
            places.put(
                    part.id(),
                    new Placement(
                            random.nextInt(40) / 2.0,
                            random.nextInt(30) / 2.0,
                            90.0 * random.nextInt(4)));
        }
        BenchLayout layout = BenchLayout.of(scenario.withPlacement(places));
        assertEquals(scenario.parts().size(), layout.parts().size());
        assertEquals(scenario.links().size(), layout.routes().size());
    }
}
