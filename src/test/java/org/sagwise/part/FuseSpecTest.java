package org.sagwise.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class FuseSpecTest {

    private static final FuseSpec FUSE = new FuseSpec(20, 0.0034, 520);

    private static final FuseMelting MELTING = FUSE.melting();

    @Test
    void meltingTimeS_short_isTheMeltingIntegralOverTheSquare() {
        assertEquals(520 / (500.0 * 500), MELTING.meltingTimeS(500), 0.02 * 520 / 250_000);
    }

    @Test
    void meltingTimeS_upToTheLeastMeltingCurrent_isNever() {
        assertEquals(Double.POSITIVE_INFINITY, MELTING.meltingTimeS(20));
        assertEquals(Double.POSITIVE_INFINITY, MELTING.meltingTimeS(24));
        assertTrue(Double.isFinite(MELTING.meltingTimeS(24.1)));
    }

    /** Bands of blade fuses at 135, 200 and 350 % (ISO 8820-3, from memory); three seconds do not blow it at 135 %. */
    @Test
    void meltingTimeS_overloads_liesWithinTheBandsOfBladeFuses() {
        double little = MELTING.meltingTimeS(27);

        assertTrue(little > 10 && little < 60, "at 135 % " + little);
        assertEquals(1, MELTING.element(0, 27, little) + MELTING.holder(0, 27, little), 1e-6);
        assertTrue(MELTING.meltingTimeS(40) > 0.15 && MELTING.meltingTimeS(40) < 5);
        assertTrue(MELTING.meltingTimeS(70) > 0.08 && MELTING.meltingTimeS(70) < 0.5);
    }

    @Property
    void heat_restAndEitherDirection_behaveAlike(
            @ForAll @DoubleRange(min = 0, max = 100) @Scale(10) double currentA,
            @ForAll @DoubleRange(min = 0, max = 10) @Scale(10) double durationS) {
        assertEquals(MELTING.element(0, currentA, durationS), MELTING.element(0, -currentA, durationS));
        assertTrue(MELTING.element(0.5, 0, durationS) <= 0.5 && MELTING.holder(0.5, 0, durationS) <= 0.5);
    }

    @Test
    void usualMeltingA2s_rating_growsWithItsSquare() {
        assertEquals(520, FuseSpec.usualMeltingA2s(20), 1e-9);
        assertEquals(130, FuseSpec.usualMeltingA2s(10), 1e-9);
    }
}
