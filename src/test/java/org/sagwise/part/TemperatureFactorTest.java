package org.sagwise.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class TemperatureFactorTest {

    private static final TemperatureFactor STEEP =
            TemperatureFactor.through(new double[] {20, 120}, new double[] {50, 100});

    @Test
    void at_twentyDegrees_isOne() {
        assertEquals(1, STEEP.at(20));
    }

    @Test
    void at_betweenAndBeyond_isStraightThenHeld() {
        assertEquals(1.5, STEEP.at(70), 1e-12);
        assertEquals(2, STEEP.at(500));
        assertEquals(0.8, STEEP.at(0), 1e-12);
        assertEquals(120, STEEP.highestC());
    }

    @Test
    void at_tableThatBeginsElsewhere_countsFromTwentyDegreesAllTheSame() {
        TemperatureFactor late = TemperatureFactor.through(new double[] {30, 130}, new double[] {1.1, 2.1});

        assertEquals(1, late.at(20), 1e-12);
        assertEquals(2.1, late.at(130), 1e-12);
    }

    @Property
    void at_anyTemperature_isAboveZero(@ForAll @DoubleRange(min = -273, max = 3000) @Scale(10) double temperatureC) {
        assertTrue(STEEP.at(temperatureC) > 0);
    }

    @Test
    void through_tableOutOfOrder_isRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> TemperatureFactor.through(new double[] {20, 20}, new double[] {1, 2}));
        assertThrows(
                IllegalArgumentException.class,
                () -> TemperatureFactor.through(new double[] {20, 30}, new double[] {1, 0}));
        assertThrows(
                IllegalArgumentException.class, () -> TemperatureFactor.through(new double[] {20}, new double[] {1}));
    }
}
