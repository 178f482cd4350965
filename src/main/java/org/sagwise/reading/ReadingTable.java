package org.sagwise.reading;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.sagwise.quantity.Measure;
import org.sagwise.quantity.Unit;

/**
 * The numbers that can be read of one kind of thing, by the names that lessons, JSON and whoever
 * asks for a number by name use. A name ends in its unit; it is never given another meaning.
 *
 * @param <T> what they are read of
 */
public final class ReadingTable<T> {

    /** What can be read of a cell. */
    public static final ReadingTable<CellReading> CELL = new ReadingTable<>(List.of(
            new Row<>("rest_V", CellReading::restV),
            new Row<>("terminal_V", CellReading::terminalV),
            new Row<>("sag_V", CellReading::sagV),
            new Row<>("current_A", CellReading::currentA),
            new Row<>("limit_A", CellReading::limitA),
            new Row<>("load_fraction", CellReading::loadFraction),
            new Row<>("internal_ohm", CellReading::internalOhm),
            new Row<>("heat_W", CellReading::heatW)));

    /** What can be read of a coil. */
    public static final ReadingTable<CoilReading> COIL = new ReadingTable<>(List.of(
            new Row<>("ohm", CoilReading::ohm),
            new Row<>("volts_V", CoilReading::voltsV),
            new Row<>("current_A", CoilReading::currentA),
            new Row<>("power_W", CoilReading::powerW),
            new Row<>("temperature_C", CoilReading::temperatureC)));

    /** What can be read of any part that is no cell. */
    public static final ReadingTable<PartReading> PART = new ReadingTable<>(List.of(
            new Row<>("current_A", PartReading::currentA),
            new Row<>("volts_V", PartReading::voltsV),
            new Row<>("power_W", PartReading::powerW)));

    /** What can be read of a link. */
    public static final ReadingTable<LinkReading> LINK = new ReadingTable<>(List.of(
            new Row<>("ohm", LinkReading::ohm),
            new Row<>("current_A", LinkReading::currentA),
            new Row<>("drop_V", LinkReading::dropV),
            new Row<>("heat_W", LinkReading::heatW)));

    /** What can be read of the pack as a whole. */
    public static final ReadingTable<PackReading> PACK = new ReadingTable<>(List.of(
            new Row<>("given_W", PackReading::givenW),
            new Row<>("delivered_W", PackReading::deliveredW),
            new Row<>("cell_heat_W", PackReading::cellHeatW),
            new Row<>("path_heat_W", PackReading::pathHeatW),
            new Row<>("charging_W", PackReading::chargingW),
            new Row<>("board_heat_W", PackReading::boardHeatW),
            new Row<>("supply_heat_W", PackReading::supplyHeatW),
            new Row<>("load_current_A", PackReading::loadCurrentA),
            new Row<>("drop_V", PackReading::dropV),
            new Row<>("efficiency", PackReading::efficiency)));

    private final List<Row<T>> rows;
    private final Map<String, Row<T>> byName;

    /** A table of these rows, in the order in which they are told. */
    public ReadingTable(List<Row<T>> rows) {
        this.rows = List.copyOf(rows);
        byName = rows.stream().collect(Collectors.toUnmodifiableMap(Row::name, row -> row));
    }

    /**
     * A number that can be read.
     *
     * @param <T> what it is read of
     * @param name its name, which ends in its unit; without one it is a share
     * @param getter the number, in that unit; NaN where it cannot be told
     */
    public record Row<T>(String name, ToDoubleFunction<T> getter) {

        public double of(T read) {
            return getter.applyAsDouble(read);
        }
    }

    /** The unit that the name of a number ends in. */
    public static Unit unitOf(String name) {
        return Measure.ofKey(name).map(Measure::unit).orElse(Unit.FRACTION);
    }

    public List<Row<T>> rows() {
        return rows;
    }

    /** The number of this name; empty if there is none in the table. */
    public OptionalDouble read(T read, String name) {
        Row<T> row = byName.get(name);
        return row == null ? OptionalDouble.empty() : OptionalDouble.of(row.of(read));
    }
}
