package org.sagwise.lesson;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.sagwise.reading.CellReading;
import org.sagwise.reading.CoilReading;
import org.sagwise.reading.LinkReading;
import org.sagwise.reading.PackReading;
import org.sagwise.reading.PartReading;
import org.sagwise.reading.Readings;

/** The readings at one instant by the names that lessons use. */
final class Quantities {

    /** Names the pack as a whole where a part's id would stand. */
    static final String PACK = "pack";

    /** Names the multimeter where a part's id would stand. */
    static final String PROBES = "probes";

    private static final Map<String, ToDoubleFunction<CellReading>> CELL = Map.of(
            "rest_V", CellReading::restV,
            "terminal_V", CellReading::terminalV,
            "sag_V", CellReading::sagV,
            "current_A", CellReading::currentA,
            "limit_A", CellReading::limitA,
            "internal_ohm", CellReading::internalOhm,
            "heat_W", CellReading::heatW,
            "load_fraction", CellReading::loadFraction);

    private static final Map<String, ToDoubleFunction<CoilReading>> COIL = Map.of(
            "ohm", CoilReading::ohm,
            "volts_V", CoilReading::voltsV,
            "current_A", CoilReading::currentA,
            "power_W", CoilReading::powerW);

    private static final Map<String, ToDoubleFunction<PartReading>> PART = Map.of(
            "volts_V", PartReading::voltsV,
            "current_A", PartReading::currentA,
            "power_W", PartReading::powerW);

    private static final Map<String, ToDoubleFunction<LinkReading>> LINK = Map.of(
            "ohm", LinkReading::ohm,
            "current_A", LinkReading::currentA,
            "drop_V", LinkReading::dropV,
            "heat_W", LinkReading::heatW);

    private static final Map<String, ToDoubleFunction<PackReading>> PACKED = Map.of(
            "given_W", PackReading::givenW,
            "delivered_W", PackReading::deliveredW,
            "cell_heat_W", PackReading::cellHeatW,
            "path_heat_W", PackReading::pathHeatW,
            "current_A", PackReading::loadCurrentA,
            "drop_V", PackReading::dropV,
            "efficiency", PackReading::efficiency);

    private Quantities() {}

    /**
     * A reading of a part, a link, the pack or the probes; empty if there is none of that name.
     *
     * @param linkIndex place of the link that has this name, or -1
     */
    static OptionalDouble read(Readings readings, String part, String quantity, int linkIndex) {
        if (part.equals(PACK)) {
            return value(PACKED, readings.pack(), quantity);
        }
        if (part.equals(PROBES)) {
            return quantity.equals("volts_V") && readings.probes().isPresent()
                    ? OptionalDouble.of(readings.probes().get().voltsV())
                    : OptionalDouble.empty();
        }
        if (linkIndex >= 0) {
            return value(LINK, readings.links().get(linkIndex), quantity);
        }
        Optional<CellReading> cell = readings.cell(part);
        if (cell.isPresent()) {
            return value(CELL, cell.get(), quantity);
        }
        Optional<CoilReading> coil = readings.coil(part);
        return coil.isPresent()
                ? value(COIL, coil.get(), quantity)
                : readings.part(part).map(it -> value(PART, it, quantity)).orElse(OptionalDouble.empty());
    }

    private static <T> OptionalDouble value(Map<String, ToDoubleFunction<T>> table, T reading, String quantity) {
        return table.containsKey(quantity)
                ? OptionalDouble.of(table.get(quantity).applyAsDouble(reading))
                : OptionalDouble.empty();
    }
}
