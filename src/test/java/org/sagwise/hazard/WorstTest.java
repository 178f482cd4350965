package org.sagwise.hazard;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class WorstTest {

    @Test
    void first_apartByLessThanIsPrinted_staysInItsOrder() {
        double more = 2.1 + 1e-6;

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

    @Test
    void least_ofBothSigns_beginsWithWhatIsFarthestBelow() {
        assertEquals(
                List.of(-3.0, -2.0, 0.0, 2.0, Double.NaN),
                List.of(2.0, Double.NaN, -2.0, 0.0, -3.0).stream()
                        .sorted(Worst.least(size -> size))
                        .toList());
    }
}
