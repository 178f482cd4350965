package org.sagwise;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.AfterContainer;

/** The build must not depend on luck: what a property is tried with is the same in every run. */
class PropertySeedsTest {

    private static final List<Long> SEEN = new ArrayList<>();

    @Property(tries = 5, edgeCases = EdgeCasesMode.NONE)
    void property_ofAnyName_hasTheSeedOfItsName(@ForAll long number) {
        SEEN.add(number);
    }

    @AfterContainer
    static void property_ofAnyName_wasTriedWithWhatItAlwaysIs() {
        List<Long> always = List.of(467678L, 26L, 459122L, -205543L, 5859861315090282593L);
        boolean same = SEEN.equals(always);
        assertTrue(same != PropertySeeds.isSearching(), () -> "tried with " + SEEN);
    }
}
