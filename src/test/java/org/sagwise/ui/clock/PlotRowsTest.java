package org.sagwise.ui.clock;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How many plots stand side by side. */
class PlotRowsTest {

    @ParameterizedTest
    @CsvSource({"1250, 1, 4", "995, 1, 4", "1890, 2, 4", "800, 1.5, 2", "500, 2, 2", "470, 2, 1", "0, 1, 1"})
    void inRow_asWideAsNamesAndAxesNeed(double width, double textScale, int expected) {
        assertEquals(expected, PlotRows.inRow(width, textScale, new double[] {34, 22, 22, 22}));
    }
}
