package org.sagwise.scenario.edit;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.RandomScenarios;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Placement;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.Texts;

/** Every edit can be called by a name that is written. */
class EditNamesTest {

    private static final Texts TEXTS = Texts.in("edits", Locale.ENGLISH);

    @Property(tries = 50)
    void name_anyEdit_hasAText(@ForAll Random random) {
        Scenario scenario = new RandomScenarios(random, CatalogueLoader.builtIn()).scenario();
        for (Edit edit : new RandomEdits(random, scenario, scenario).all()) {
            EditName name = edit.name(scenario);
            assertTrue(TEXTS.has(name.key()), name.key());
            String text = name.in(Locale.ENGLISH);
            assertFalse(text.matches(".*\\{\\d.*"), text);
        }
    }

    @Property(tries = 20)
    void name_addingAnyKind_hasAText(@ForAll PartKind kind) {
        AddPart add = new AddPart(Part.of("p", kind), new Placement(0, 0, 0));
        assertTrue(TEXTS.has(add.name(Scenario.empty()).key()));
    }
}
