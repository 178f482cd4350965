package org.sagwise.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sagwise.quantity.Unit;

class ReadingRefTest {

    @Test
    void parse_bareReading_isTakenWithButtonHeld() {
        assertEquals(
                Optional.of(new ReadingRef(Optional.empty(), When.HELD, "coil", "power_W")),
                ReadingRef.parse("coil.power_W"));
    }

    @Test
    void parse_benchAndMoment_takesBoth() {
        assertEquals(
                Optional.of(new ReadingRef(Optional.of("two"), When.RUN, "pack", "time_s")),
                ReadingRef.parse("two/run/pack.time_s"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"coil.power_W", "rest/A.terminal_V", "two/A.sag_V", "a/run/A.charge"})
    void toString_ofParsed_isWhatWasWritten(String text) {
        assertEquals(text, ReadingRef.parse(text).orElseThrow().toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "coil", ".power_W", "coil.", "a/b/c/coil.ohm", "/coil.ohm", "x/y/A.ohm"})
    void parse_otherShape_isRefused(String text) {
        assertTrue(ReadingRef.parse(text).isEmpty());
    }

    @Test
    void unit_ofReading_isThatOfItsEnding() {
        assertEquals(Unit.WATT, ReadingRef.parse("coil.power_W").orElseThrow().unit());
        assertEquals(Unit.OHM, ReadingRef.parse("coil.ohm").orElseThrow().unit());
        assertEquals(
                Unit.WATT_HOUR, ReadingRef.parse("pack.energy_Wh").orElseThrow().unit());
        assertEquals(
                Unit.FRACTION, ReadingRef.parse("run/A.charge").orElseThrow().unit());
    }
}
