package org.sagwise.picture.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.RandomScenarios;
import org.sagwise.file.ScenarioReader;
import org.sagwise.part.Catalogue;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Placement;
import org.sagwise.scenario.Scenario;

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
                    new Placement(random.nextInt(40) / 2.0, random.nextInt(30) / 2.0, 90.0 * random.nextInt(4)));
        }
        BenchLayout layout = BenchLayout.of(scenario.withPlacement(places));
        assertEquals(scenario.parts().size(), layout.parts().size());
        assertEquals(scenario.links().size(), layout.routes().size());
    }

    /** The meter in the hand finds room only far from the parts, off the lattice of conductors. */
    @Property(tries = 300)
    void of_oneMoreCellAnywhereByTheMeter_showsIt(@ForAll Random random) {
        Scenario demo = new ScenarioReader(CATALOGUE)
                .read(DemoScenarios.bytes(DemoScenarios.OPENING))
                .scenario()
                .orElseThrow();
        Map<String, Placement> places = new LinkedHashMap<>(BenchLayout.of(demo).placements());
        places.put("C", new Placement(random.nextInt(80) / 2.0 - 10, random.nextInt(60) / 2.0 - 10, 0));
        Scenario more = demo.plus(Part.of("C", PartKind.CELL, "model", "inr18650-2500-20A", "charge", 1))
                .withPlacement(places);
        double textScale = 1 + random.nextInt(5) / 4.0;
        assertTrue(BenchLayout.of(more, textScale).probes().isPresent());
    }
}
