package org.sagwise.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.sagwise.quantity.Unit;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Press;

/**
 * A reading by the name that lessons and the command line use: {@code coil.power_W}, {@code
 * rest/A.terminal_V}, {@code pack.drop_V}; a link by its id, or {@code #3} for the third.
 *
 * @param press position of the button; held where the name says nothing
 * @param part id of a part or of a link, or {@code pack} or {@code probes}
 * @param quantity what is read, its unit in the ending of the name
 */
public record NamedReading(Press press, String part, String quantity) {

    /** Names the pack as a whole where a part's id would stand. */
    public static final String PACK = "pack";

    /** Names the multimeter where a part's id would stand. */
    public static final String PROBES = "probes";

    private static final String REST = "rest/";

    /** Reads a name; empty if the text has not that shape. */
    public static Optional<NamedReading> of(String text) {
        boolean isAtRest = text.startsWith(REST);
        String name = isAtRest ? text.substring(REST.length()) : text;
        int dot = name.lastIndexOf('.');
        return dot < 1 || dot == name.length() - 1
                ? Optional.empty()
                : Optional.of(new NamedReading(
                        isAtRest ? Press.RELEASED : Press.HELD, name.substring(0, dot), name.substring(dot + 1)));
    }

    /** Every reading of a bench with the button held. */
    public static List<NamedReading> all(Bench bench) {
        List<NamedReading> all = new ArrayList<>();
        bench.cells().keySet().forEach(id -> add(all, id, ReadingTable.CELL));
        bench.coils().keySet().forEach(id -> add(all, id, ReadingTable.COIL));
        bench.scenario().parts().stream()
                .filter(part ->
                        !bench.cells().containsKey(part.id()) && !bench.coils().containsKey(part.id()))
                .forEach(part -> add(all, part.id(), ReadingTable.PART));
        add(all, PACK, ReadingTable.PACK);
        List<Link> links = bench.scenario().links();
        for (int i = 0; i < links.size(); i++) {
            add(all, Link.nameOf(links, i), ReadingTable.LINK);
        }
        return all;
    }

    private static void add(List<NamedReading> all, String part, ReadingTable<?> table) {
        table.rows().forEach(row -> all.add(new NamedReading(Press.HELD, part, row.name())));
    }

    /** The unit in which the reading is given. */
    public Unit unit() {
        return ReadingTable.unitOf(quantity);
    }

    /** The reading of a bench at its start; empty if there is none of that name. */
    public OptionalDouble read(Bench bench) {
        return read(
                bench.moment(press).readings(),
                part,
                quantity,
                Link.placeOf(bench.scenario().links(), part));
    }

    /**
     * A reading of a part, a link, the pack or the probes; empty if there is none of that name.
     *
     * @param linkIndex place of the link that has this name, or -1
     */
    public static OptionalDouble read(Readings readings, String part, String quantity, int linkIndex) {
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

    @Override
    public String toString() {
        return (press.isHeld() ? "" : REST) + part + "." + quantity;
    }
}
