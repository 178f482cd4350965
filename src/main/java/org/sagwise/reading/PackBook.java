package org.sagwise.reading;

import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.sagwise.part.PartKind;
import org.sagwise.part.Role;

/** Adds up where the power of a bench comes from and where it goes. */
final class PackBook {

    private static final Set<Role> PATH = Set.of(Role.IN_LINE, Role.METER);

    private final Bench bench;
    private final List<CellReading> cells;
    private final List<PartReading> parts;
    private final List<LinkReading> links;
    private final ToDoubleFunction<String> boardOutputW;
    private final LoadCurrent.Heights heights;
    private double givenW;
    private double chargingW;
    private double supplyHeatW;

    /**
     * @param boardOutputW power at the output of a board by its id, W
     * @param heights potential of the first terminal of a part by its id, V
     */
    PackBook(
            Bench bench,
            List<CellReading> cells,
            List<PartReading> parts,
            List<LinkReading> links,
            ToDoubleFunction<String> boardOutputW,
            LoadCurrent.Heights heights) {
        this.bench = bench;
        this.cells = cells;
        this.parts = parts;
        this.links = links;
        this.boardOutputW = boardOutputW;
        this.heights = heights;
    }

    PackReading write() {
        cells.forEach(cell -> source(cell.restV() * cell.currentA()));
        parts.forEach(this::source);
        double path = links.stream().mapToDouble(LinkReading::heatW).sum()
                + sum(part -> PATH.contains(part.kind().role()) ? part.powerW() : 0);
        return new PackReading(
                givenW,
                sum(part -> part.kind().role() == Role.LOAD ? part.powerW() : 0),
                cells.stream().mapToDouble(CellReading::heatW).sum(),
                path,
                chargingW,
                sum(part -> part.kind() == PartKind.BOARD ? part.powerW() - boardOutputW.applyAsDouble(part.id()) : 0),
                supplyHeatW,
                LoadCurrent.of(parts, heights, this::isLoad));
    }

    private boolean isLoad(PartReading part) {
        boolean anyCoil = parts.stream().anyMatch(other -> other.kind() == PartKind.COIL);
        return anyCoil ? part.kind() == PartKind.COIL : part.kind().role() == Role.LOAD;
    }

    private double sum(ToDoubleFunction<PartReading> power) {
        return parts.stream().mapToDouble(power).sum();
    }

    private void source(PartReading part) {
        if (part.kind() == PartKind.SUPPLY) {
            double emfV = bench.values(part.id()).need("volts");
            source(emfV * part.currentA());
            supplyHeatW += (emfV - part.voltsV()) * part.currentA();
        } else if (part.kind() == PartKind.CHARGER) {
            source(part.powerW());
        }
    }

    /** A source whose current cannot be told leaves both sums untold. */
    private void source(double powerW) {
        if (Double.isNaN(powerW) || powerW > 0) {
            givenW += powerW;
        }
        if (!(powerW > 0)) {
            chargingW -= powerW;
        }
    }
}
