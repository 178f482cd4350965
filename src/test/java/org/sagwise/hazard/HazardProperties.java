package org.sagwise.hazard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.sagwise.fixture.RandomCircuits;
import org.sagwise.scenario.Scenario;

/** What must hold of the cautions on any bench. */
class HazardProperties {

    @Provide
    Arbitrary<SoundCircuits> sound() {
        return Combinators.combine(
                        Arbitraries.integers().between(1, 4),
                        Arbitraries.integers().between(1, 4),
                        Arbitraries.doubles().between(0.3, 1),
                        Arbitraries.doubles().between(0, 10),
                        Arbitraries.of(true, false),
                        Arbitraries.of(true, false),
                        Arbitraries.of(true, false),
                        Arbitraries.of(true, false))
                .as(SoundCircuits::new);
    }

    @Property(tries = 400)
    void check_soundCircuit_findsNothing(@ForAll("sound") SoundCircuits sound) {
        assertEquals(List.of(), Found.ids(sound.build()));
    }

    @Property(tries = 200)
    void check_positionOfTheButton_makesNoDifference(@ForAll long seed, @ForAll @IntRange(min = 2, max = 25) int most) {
        Scenario scenario = RandomCircuits.of(seed, most);
        assertEquals(Found.in(scenario.pressed()), Found.in(scenario.released()));
    }

    @Property(tries = 1000)
    void check_anyBench_givesWellFormedCautionsThatCanBeSaid(
            @ForAll long seed, @ForAll @IntRange(min = 2, max = 25) int most) {
        Scenario scenario = WildCircuits.of(seed, most);
        List<Caution> cautions = Found.in(scenario);
        for (Caution caution : cautions) {
            assertTrue(caution.parts().stream().allMatch(id -> scenario.part(id).isPresent()));
            assertTrue(
                    caution.links().stream().allMatch(i -> i < scenario.links().size()));
            assertEquals(caution.parts().size(), new HashSet<>(caution.parts()).size(), "no part is named twice");
            assertCanBeSaid(caution, Locale.ENGLISH);
            assertCanBeSaid(caution, Locale.GERMAN);
        }
        for (int i = 1; i < cautions.size(); i++) {
            assertTrue(cautions.get(i - 1).signal().compareTo(cautions.get(i).signal()) <= 0, "the gravest first");
        }
    }

    private static void assertCanBeSaid(Caution caution, Locale locale) {
        for (String text : List.of(
                CautionTexts.title(caution, locale),
                CautionTexts.text(caution, locale),
                CautionTexts.advice(caution, locale))) {
            assertFalse(text.contains("{") || text.contains("—"), text);
        }
    }
}
