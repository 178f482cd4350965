package org.sagwise.reading;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.TerminalRef;

/**
 * Everything that can be measured on a bench at one moment. Screens, command line, lessons and
 * exports all ask this, so that a number shown twice is computed once.
 *
 * @param title title of the scenario
 * @param fired whether the switches are pressed
 * @param cells cells in file order
 * @param coils coils in file order
 * @param parts every part that is not a cell, coils too, in file order
 * @param links links in file order
 * @param pack the pack as a whole
 * @param probes what the meter shows, if its probes are placed
 * @param ohmmeters what meters among the parts show that are turned to ohms, by id
 * @param nodes potential of every terminal, V, in order of parts and terminals; NaN for one that
 *     hangs in the air
 * @param islands number of the island of every terminal: terminals of different islands are not
 *     joined by anything, so that no voltage exists between them
 * @param balance how well the numbers add up
 * @param notices what kept part of the bench from being computed
 */
public record Readings(
        String title,
        boolean fired,
        List<CellReading> cells,
        List<CoilReading> coils,
        List<PartReading> parts,
        List<LinkReading> links,
        PackReading pack,
        Optional<ProbeReading> probes,
        Map<String, MeterDisplay> ohmmeters,
        Map<TerminalRef, Double> nodes,
        Map<TerminalRef, Integer> islands,
        Balance balance,
        List<Notice> notices) {

    /** What the thumb does to the button. */
    public Press press() {
        return Press.of(fired);
    }

    public Optional<CellReading> cell(String id) {
        return cells.stream().filter(cell -> cell.id().equals(id)).findFirst();
    }

    public Optional<CoilReading> coil(String id) {
        return coils.stream().filter(coil -> coil.id().equals(id)).findFirst();
    }

    public Optional<PartReading> part(String id) {
        return parts.stream().filter(part -> part.id().equals(id)).findFirst();
    }

    /**
     * The same with everything left out that depends on what is joined to what and on the button: what a part is
     * stays, what it does is NaN. For who is to foretell it.
     */
    public Readings veiled() {
        double not = Double.NaN;
        return new Readings(
                title,
                fired,
                cells.stream()
                        .map(it ->
                                new CellReading(it.id(), it.restV(), not, not, not, it.limitA(), it.internalOhm(), not))
                        .toList(),
                coils.stream()
                        .map(it -> new CoilReading(it.id(), it.ohm(), not, not, not, not))
                        .toList(),
                parts.stream()
                        .map(it -> new PartReading(
                                it.id(), it.kind(), not, not, not, it.state().seen()))
                        .toList(),
                links.stream()
                        .map(it -> new LinkReading(it.index(), it.from(), it.to(), it.ohm(), not, not, not))
                        .toList(),
                new PackReading(not, not, not, not, not, not, not, not),
                Optional.empty(),
                Map.of(),
                Map.of(),
                Map.of(),
                balance,
                List.of());
    }

    /** Whether they tell only what parts are: a bench with parts has potentials otherwise. */
    public boolean isVeiled() {
        return nodes.isEmpty() && !(cells.isEmpty() && parts.isEmpty());
    }

    /** Potential of a terminal, V; NaN if it hangs in the air or does not exist. */
    public double potentialV(TerminalRef terminal) {
        return nodes.getOrDefault(terminal, Double.NaN);
    }
}
