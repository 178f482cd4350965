package org.sagwise.scenario.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.RandomScenarios;
import org.sagwise.part.Catalogue;
import org.sagwise.scenario.Draft;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Placement;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioRules;

/** Whatever is done to whatever bench, a sound document stays sound. */
class EditProperties {

    private static final Catalogue CATALOGUE = CatalogueLoader.builtIn();

    private final ScenarioRules rules = new ScenarioRules(CATALOGUE);

    @Property(tries = 200)
    void apply_anyEditsOneAfterTheOther_keepTheRules(@ForAll Random random) {
        Scenario scenario = scenario(random);
        for (Edit edit : new RandomEdits(random, scenario, scenario(random)).all()) {
            scenario = edit.apply(scenario);
            assertEquals(List.of(), rules.check(Draft.of(scenario)), edit.toString());
            assertFalse(edit.name(scenario).key().isBlank());
        }
    }

    @Property(tries = 200)
    void apply_twiceToTheSame_givesTheSameAndLeavesTheOldAlone(@ForAll Random random) {
        Scenario before = scenario(random);
        Draft written = Draft.of(before);
        for (Edit edit : new RandomEdits(random, before, scenario(random)).all()) {
            assertEquals(edit.apply(before), edit.apply(before));
            assertEquals(written, Draft.of(before));
        }
    }

    @Property(tries = 200)
    void flip_twice_isAsBefore(@ForAll Random random) {
        Scenario before = settled(scenario(random));
        FlipParts flip = new FlipParts(ids(before));
        assertEquals(before, flip.apply(flip.apply(before)));
    }

    @Property(tries = 200)
    void turn_fourTimes_isAsBefore(@ForAll Random random) {
        Scenario before = settled(scenario(random));
        TurnParts turn = new TurnParts(ids(before), 1);
        Scenario after = before;
        for (int i = 0; i < 4; i++) {
            after = turn.apply(after);
        }
        assertEquals(before, after);
    }

    @Property(tries = 200)
    void delete_ofWhatWasPasted_isAsBefore(@ForAll Random random) {
        Scenario before = settled(scenario(random));
        Scenario pasted = new PasteParts(scenario(random), 1, 1).apply(before);
        Set<String> added = ids(pasted);
        added.removeAll(ids(before));
        assertEquals(before, new DeleteParts(added).apply(pasted));
    }

    private static Scenario scenario(Random random) {
        return new RandomScenarios(random, CATALOGUE).scenario();
    }

    private static Set<String> ids(Scenario scenario) {
        return scenario.parts().stream().map(Part::id).collect(Collectors.toSet());
    }

    /** Every part lies somewhere, turned by a whole quarter. */
    private static Scenario settled(Scenario scenario) {
        Map<String, Placement> places =
                ids(scenario).stream().collect(Collectors.toMap(id -> id, id -> new Placement(1, 2, 90)));
        return scenario.withPlacement(places);
    }
}
