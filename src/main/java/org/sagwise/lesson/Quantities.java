package org.sagwise.lesson;

import java.util.Optional;
import java.util.OptionalDouble;
import org.sagwise.reading.CellReading;
import org.sagwise.reading.CoilReading;
import org.sagwise.reading.ReadingTable;
import org.sagwise.reading.Readings;

/** The readings at one instant by the names that lessons use. */
final class Quantities {

    /** Names the pack as a whole where a part's id would stand. */
    static final String PACK = "pack";

    /** Names the multimeter where a part's id would stand. */
    static final String PROBES = "probes";

    private Quantities() {}

    /**
     * A reading of a part, a link, the pack or the probes; empty if there is none of that name.
     *
     * @param linkIndex place of the link that has this name, or -1
     */
    static OptionalDouble read(Readings readings, String part, String quantity, int linkIndex) {
        if (part.equals(PACK)) {
            return ReadingTable.PACK.read(readings.pack(), quantity.equals("current_A") ? "load_current_A" : quantity);
        }
        if (part.equals(PROBES)) {
            return quantity.equals("volts_V") && readings.probes().isPresent()
                    ? OptionalDouble.of(readings.probes().get().voltsV())
                    : OptionalDouble.empty();
        }
        if (linkIndex >= 0) {
            return ReadingTable.LINK.read(readings.links().get(linkIndex), quantity);
        }
        Optional<CellReading> cell = readings.cell(part);
        if (cell.isPresent()) {
            return ReadingTable.CELL.read(cell.get(), quantity);
        }
        Optional<CoilReading> coil = readings.coil(part);
        return coil.isPresent()
                ? ReadingTable.COIL.read(coil.get(), quantity)
                : readings.part(part)
                        .map(it -> ReadingTable.PART.read(it, quantity))
                        .orElse(OptionalDouble.empty());
    }
}
