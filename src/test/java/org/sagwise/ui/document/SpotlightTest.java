package org.sagwise.ui.document;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.sagwise.interaction.Lit;

class SpotlightTest {

    private static final Lit BOTH = Lit.of(List.of("A", "B"), List.of(2));

    private final Spotlight spotlight = new Spotlight();

    @Test
    void point_atSomethingElse_givesWayToWhatWasShownWhenItLeaves() {
        spotlight.show(BOTH);
        spotlight.point(Lit.part("coil"));
        assertEquals(Lit.part("coil"), spotlight.lit());

        spotlight.point(Lit.NOTHING);
        assertEquals(BOTH, spotlight.lit());
    }

    @Test
    void point_atAPartOfWhatIsShown_keepsAllOfIt() {
        spotlight.show(BOTH);
        spotlight.point(Lit.part("B"));

        assertEquals(BOTH, spotlight.lit());
    }

    @Test
    void clear_always_lightsNothing() {
        spotlight.show(BOTH);
        spotlight.point(Lit.link(1));
        spotlight.clear();

        assertEquals(Lit.NOTHING, spotlight.lit());
    }
}
