package org.sagwise.ui.document;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.sagwise.interaction.Selection;

class SpotlightTest {

    private static final Selection BOTH = Selection.of(List.of("A", "B"), List.of(2));

    private final Spotlight spotlight = new Spotlight();

    @Test
    void point_atSomethingElse_givesWayToWhatWasShownWhenItLeaves() {
        spotlight.show(BOTH);
        spotlight.point(Selection.part("coil"));
        assertEquals(Selection.part("coil"), spotlight.lit());

        spotlight.point(Selection.NOTHING);
        assertEquals(BOTH, spotlight.lit());
    }

    @Test
    void point_atAPartOfWhatIsShown_keepsAllOfIt() {
        spotlight.show(BOTH);
        spotlight.point(Selection.part("B"));

        assertEquals(BOTH, spotlight.lit());
    }

    @Test
    void clear_always_lightsNothing() {
        spotlight.show(BOTH);
        spotlight.point(Selection.link(1));
        spotlight.clear();

        assertEquals(Selection.NOTHING, spotlight.lit());
    }
}
