package org.sagwise.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DurationsTest {

    @ParameterizedTest
    @CsvSource({"3s, 3", "27s, 27", "90 min, 5400", "1h, 3600", "2m, 120", "0, 0", "1.5 h, 5400"})
    void parse_durationOfCommandLine_isSeconds(String text, double seconds) {
        assertEquals(new Parsed.Value(seconds), Durations.parse(text, Locale.ROOT));
    }

    @Test
    void parse_belowZero_isRefused() {
        Parsed.Refused refused = assertInstanceOf(Parsed.Refused.class, Durations.parse("-3s", Locale.ROOT));
        assertEquals("“-3s” is less than no time. Write a duration of zero or more.", refused.text(Locale.ENGLISH));
    }
}
