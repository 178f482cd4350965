package org.sagwise.part.key;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.sagwise.part.PartKind;

class EffectiveKeysTest {

    private static EffectiveKeys of(PartKind kind, Keys own, Keys model) {
        return kind.effective(own, model, Keys.of("temperature_C", 18));
    }

    @Test
    void number_saidByBoth_isThePartsOwn() {
        EffectiveKeys fuse = of(PartKind.FUSE, Keys.of("rating_A", 7), Keys.of("rating_A", 10, "mohm", 7.5));

        assertEquals(7, fuse.need("rating_A"));
        assertEquals(7.5, fuse.need("mohm"));
        assertTrue(fuse.isOwn("rating_A"));
        assertFalse(fuse.isOwn("mohm"));
    }

    /** A charger commonly stops at a tenth of its current (common practice, no source). */
    @Test
    void number_taperOfAChargerWithoutModel_isATenthOfItsCurrent() {
        assertEquals(
                0.2, of(PartKind.CHARGER, Keys.of("current_A", 2), Keys.NONE).need("taper_A"), 1e-12);
        assertEquals(
                0.05,
                of(PartKind.CHARGER, Keys.NONE, Keys.of("current_A", 1, "taper_A", 0.05))
                        .need("taper_A"));
    }

    @Test
    void number_nobodySaysIt_isTheDefaultOrNone() {
        EffectiveKeys board = of(PartKind.BOARD, Keys.of("power_W", 30), Keys.NONE);

        assertEquals(0.92, board.need("efficiency"));
        assertEquals(OptionalDouble.empty(), board.number("max_input_A"));
    }

    @Test
    void number_temperatureOfACell_isThatOfItsSurroundings() {
        assertEquals(18, of(PartKind.CELL, Keys.NONE, Keys.NONE).need("temperature_C"));
        assertEquals(
                60, of(PartKind.CELL, Keys.of("temperature_C", 60), Keys.NONE).need("temperature_C"));
    }

    @Test
    void group_keysThatAreUsual_areFilledIn() {
        Keys guard = Keys.of("trip_A", 8, "trip_s", 0, "mohm", 40);

        assertEquals(
                Optional.of(guard.with("under_V", 2).with("over_V", 3.75)),
                of(PartKind.CELL, Keys.of("chemistry", "IFR"), Keys.of("guard", guard))
                        .group("guard"));
    }

    @Test
    void all_partOfAModel_saysEverythingInTheOrderOfTheTable() {
        Keys all = of(PartKind.FUSE, Keys.of("x", Keys.NONE, "model", "m"), Keys.of("rating_A", 10))
                .all();

        assertEquals(Keys.of("model", "m", "rating_A", 10, "mohm", 5, "i2t_A2s", 130), all);
        assertEquals("[model, rating_A, mohm, i2t_A2s]", all.names().toString());
    }
}
