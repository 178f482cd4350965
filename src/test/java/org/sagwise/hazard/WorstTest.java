package org.sagwise.hazard;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class WorstTest {

    @Test
    void first_apartInTheLastBitAlone_staysInItsOrder() {
        double more = Math.nextUp(2.1);

        assertEquals(
                List.of(3.0, 2.1, more),
                List.of(2.1, more, 3.0).stream()
                        .sorted(Worst.first(size -> size))
                        .toList());
        assertEquals(
                List.of(3.0, more, 2.1),
                List.of(more, 2.1, 3.0).stream()
                        .sorted(Worst.first(size -> size))
                        .toList());
    }
}
