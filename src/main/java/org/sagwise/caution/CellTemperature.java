package org.sagwise.caution;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.part.Distress;
import org.sagwise.reading.CellReading;

/**
 * A cell colder or hotter than it should be used: below 0 °C its resistance is a multiple of the
 * usual one and it sags; above the limit for discharging, typically 60 °C, and further on where the
 * vent may open, it is a hazard by itself.
 */
final class CellTemperature implements HazardRule {
    static final String COLD_ID = "cell-cold";
    static final String HOT_ID = "cell-hot";

    /** Temperature below which the cold is worth a word, °C: our choice. */
    static final double COLD_C = 0;

    @Override
    public List<Caution> check(Evidence evidence) {
        List<Caution> found = new ArrayList<>();
        evidence.cells(cell -> temperatureC(evidence, cell) < COLD_C, cell -> -temperatureC(evidence, cell))
                .forEach(cells -> found.add(cold(evidence, cells)));
        evidence.cells(cell -> isHot(evidence, cell), cell -> temperatureC(evidence, cell))
                .forEach(cells -> found.add(hot(evidence, cells)));
        return found;
    }

    private static double temperatureC(Evidence evidence, CellReading cell) {
        return evidence.state(cell.id()).temperatureC();
    }

    private static boolean isHot(Evidence evidence, CellReading cell) {
        return temperatureC(evidence, cell) > distress(evidence, cell).dischargeLimitC();
    }

    private static Distress distress(Evidence evidence, CellReading cell) {
        return evidence.spec(cell.id()).chemistry().distress();
    }

    private static Caution cold(Evidence evidence, PackCells.Hit cells) {
        CellReading worst = cells.worst();
        return new CautionBuilder(evidence, COLD_ID, Signal.NOTICE)
                .parts(cells.ids())
                .measured(temperatureC(evidence, worst), COLD_C, "°C")
                .detail("internalOhm", worst.internalOhm())
                .build();
    }

    private static Caution hot(Evidence evidence, PackCells.Hit cells) {
        CellReading worst = cells.worst();
        Distress distress = distress(evidence, worst);
        double temperatureC = temperatureC(evidence, worst);
        return new CautionBuilder(evidence, HOT_ID, Gravity.temperature(temperatureC, distress))
                .parts(cells.ids())
                .measured(temperatureC, distress.dischargeLimitC(), "°C")
                .build();
    }
}
