package org.sagwise.hazard;

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
    public List<Caution> check(HazardContext context) {
        List<Caution> found = new ArrayList<>();
        context.cells(cell -> temperatureC(context, cell) < COLD_C, cell -> -temperatureC(context, cell))
                .forEach(cells -> found.add(cold(context, cells)));
        context.cells(cell -> isHot(context, cell), cell -> temperatureC(context, cell))
                .forEach(cells -> found.add(hot(context, cells)));
        return found;
    }

    private static double temperatureC(HazardContext context, CellReading cell) {
        return context.state(cell.id()).temperatureC();
    }

    private static boolean isHot(HazardContext context, CellReading cell) {
        return temperatureC(context, cell) > distress(context, cell).dischargeLimitC();
    }

    private static Distress distress(HazardContext context, CellReading cell) {
        return context.spec(cell.id()).chemistry().distress();
    }

    private static Caution cold(HazardContext context, PackCells.Hit cells) {
        CellReading worst = cells.worst();
        return new CautionBuilder(context, COLD_ID, Signal.NOTICE)
                .parts(cells.ids())
                .measured(temperatureC(context, worst), COLD_C, "°C")
                .detail("internalOhm", worst.internalOhm())
                .build();
    }

    private static Caution hot(HazardContext context, PackCells.Hit cells) {
        CellReading worst = cells.worst();
        Distress distress = distress(context, worst);
        double temperatureC = temperatureC(context, worst);
        return new CautionBuilder(context, HOT_ID, Gravity.temperature(temperatureC, distress))
                .parts(cells.ids())
                .measured(temperatureC, distress.dischargeLimitC(), "°C")
                .build();
    }
}
