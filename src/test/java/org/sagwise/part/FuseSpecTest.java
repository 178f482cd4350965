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

    @Test
    void meltingTimeS_short_isTheMeltingIntegralOverTheSquare() {
        assertEquals(520 / (500.0 * 500), FUSE.meltingTimeS(0, 500), 0.01 * 520 / 250_000);
    }

    @Test
    void meltingTimeS_upToTheLeastMeltingCurrent_isNever() {
        assertEquals(Double.POSITIVE_INFINITY, FUSE.meltingTimeS(0, 20));
        assertEquals(Double.POSITIVE_INFINITY, FUSE.meltingTimeS(0.5, 24));
        assertTrue(Double.isFinite(FUSE.meltingTimeS(0, 24.1)));
    }

    @Test
    void meltingTimeS_alreadyMelted_isZero() {
        assertEquals(0, FUSE.meltingTimeS(1, 0));
    }

    @Property
    void after_meltingTime_isOne(
            @ForAll @DoubleRange(min = 25, max = 1000) @Scale(10) double currentA,
            @ForAll @DoubleRange(min = 0, max = 0.99) @Scale(10) double share) {
        assertEquals(1, FUSE.after(share, currentA, FUSE.meltingTimeS(share, currentA)), 1e-9);
    }

    @Property
    void after_restAndEitherDirection_behaveAlike(
            @ForAll @DoubleRange(min = 0, max = 100) @Scale(10) double currentA,
            @ForAll @DoubleRange(min = 0, max = 10) @Scale(10) double durationS) {
        assertEquals(FUSE.after(0, currentA, durationS), FUSE.after(0, -currentA, durationS));
        assertTrue(FUSE.after(0.5, 0, durationS) <= 0.5);
    }

    @Test
    void usualMeltingA2s_rating_growsWithItsSquare() {
        assertEquals(520, FuseSpec.usualMeltingA2s(20), 1e-9);
        assertEquals(130, FuseSpec.usualMeltingA2s(10), 1e-9);
    }
}
