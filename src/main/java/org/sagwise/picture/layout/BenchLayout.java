package org.sagwise.picture.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.GridBox;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Placement;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/**
 * Where everything on the bench lies. The same scenario gives the same layout, always.
 *
 * @param parts in file order
 * @param routes ways of the links, in file order; links to missing parts have none
 * @param conductors what is drawn for the links: wires and stretches of plates
 * @param notes places of the scenario's notes
 * @param probes place of the meter in the hand, if its probes rest anywhere
 * @param textScale size of figures and notes against the usual one
 * @param drawing whether parts are drawn as things or as symbols
 * @param bounds all of it, with a margin
 */
public record BenchLayout(
        List<PartBox> parts,
        List<LinkRoute> routes,
        List<Conductor> conductors,
        List<NoteBox> notes,
        Optional<ProbeBox> probes,
        double textScale,
        Drawing drawing,
        Box bounds) {

    /** Room for two cells, a button and a coil with what joins them: whoever builds begins here. */
    private static final GridBox ROOM_TO_BUILD = new GridBox(0, 0, 24 * PartShape.GRID, 13 * PartShape.GRID);

    private static final int MARGIN = 3 * PartShape.GRID / 4;

    public BenchLayout {
        parts = List.copyOf(parts);
        routes = List.copyOf(routes);
        conductors = List.copyOf(conductors);
        notes = List.copyOf(notes);
    }

    /** Lays out a scenario with figures in their usual size. */
    public static BenchLayout of(Scenario scenario) {
        return of(scenario, 1);
    }

    /**
     * Lays out a scenario. Parts with a placement lie there, on the nearest lattice place and
     * quarter turn; the others where they are clear of them.
     *
     * @param textScale size of figures and notes against the usual one, 1 to 2
     */
    public static BenchLayout of(Scenario scenario, double textScale) {
        return of(scenario, textScale, Drawing.BENCH);
    }

    /**
     * Lays out a scenario as things on the bench, or as a schematic. In a schematic all parts lie
     * where the network wants them, whatever their placement on the bench.
     *
     * @param textScale size of figures and notes against the usual one, 1 to 2
     */
    public static BenchLayout of(Scenario scenario, double textScale, Drawing drawing) {
        Scenario drawn = drawing == Drawing.BENCH ? scenario : SchematicLinks.of(scenario);
        Sizes sizes = new Sizes(textScale, drawing);
        List<PartBox> parts = LabelPlaces.boxes(drawn, spots(drawn, sizes), sizes);
        Routing routing = Routing.of(drawn.links(), parts);
        NotePlaces places = new NotePlaces(scenario, parts, routing, textScale);
        Optional<ProbeBox> probes = places.probes();
        List<NoteBox> notes = places.notes(drawing);
        List<GridBox> taken = new ArrayList<>();
        parts.forEach(part -> taken.add(part.body().union(part.label())));
        routing.routes().forEach(route -> route.points().forEach(point -> taken.add(point.box())));
        notes.forEach(note -> taken.add(note.box()));
        probes.ifPresent(meter -> taken.add(meter.bounds()));
        GridBox bounds = parts.isEmpty()
                ? ROOM_TO_BUILD
                : taken.stream().reduce(GridBox::union).orElseThrow();
        return new BenchLayout(
                parts,
                routing.routes(),
                routing.conductors(),
                notes,
                probes,
                textScale,
                drawing,
                bounds.grown(MARGIN).box());
    }

    private static Map<String, Spot> spots(Scenario scenario, Sizes sizes) {
        Map<String, Spot> fixed = new LinkedHashMap<>();
        for (Part part : scenario.parts()) {
            Placement placement = scenario.placement().get(part.id());
            if (placement != null) {
                fixed.put(part.id(), Spot.nearest(placement));
            }
        }
        if (fixed.size() == scenario.parts().size()) {
            return fixed;
        }
        Map<String, Spot> computed = AutoPlacement.of(scenario, sizes);
        return fixed.isEmpty() ? computed : new FreeSpots(scenario, sizes).completed(fixed, computed);
    }

    /** The same places with other parts on them, of the same names and kinds, in the same order. */
    BenchLayout showing(List<Part> others) {
        List<PartBox> boxes = new ArrayList<>();
        for (int i = 0; i < others.size(); i++) {
            boxes.add(parts.get(i).showing(others.get(i)));
        }
        return new BenchLayout(boxes, routes, conductors, notes, probes, textScale, drawing, bounds);
    }

    public Optional<PartBox> part(String id) {
        return parts.stream().filter(part -> part.id().equals(id)).findFirst();
    }

    public Optional<LinkRoute> route(int link) {
        return routes.stream().filter(route -> route.link() == link).findFirst();
    }

    /**
     * The stretch of a link that is its own: where several links share a plate, a contact is drawn there, so that it
     * is seen which cell it belongs to. The whole way where nothing of it is its own.
     */
    public LinkRoute own(LinkRoute route) {
        return conductors.stream()
                .filter(conductor -> conductor.shares().size() == 1 && conductor.carries(route.link()))
                .max(Comparator.comparingDouble(Conductor::length))
                .map(conductor -> new LinkRoute(route.link(), conductor.points()))
                .orElse(route);
    }

    public Optional<TerminalPoint> terminal(TerminalRef ref) {
        return part(ref.part())
                .flatMap(part -> part.terminals().stream()
                        .filter(point -> point.ref().equals(ref))
                        .findFirst());
    }

    /** The part under a point; of several the one drawn last. */
    public Optional<PartBox> partAt(double x, double y) {
        return parts.stream().filter(part -> part.body().contains(x, y)).reduce((below, above) -> above);
    }

    /** The note under a point; of several the one drawn last. */
    public Optional<NoteBox> noteAt(double x, double y) {
        return notes.stream().filter(note -> note.box().contains(x, y)).reduce((below, above) -> above);
    }

    /** The note at a place of the scenario's notes. */
    public Optional<NoteBox> note(int index) {
        return notes.stream().filter(note -> note.index() == index).findFirst();
    }

    /** The link nearest to a point, no farther than a distance. */
    public OptionalInt linkAt(double x, double y, double distance) {
        return Nearest.link(routes, x, y, distance);
    }

    /** Where all parts lie now, to be written into the scenario when one of them is moved. */
    public Map<String, Placement> placements() {
        Map<String, Placement> placements = new LinkedHashMap<>();
        for (PartBox box : parts) {
            placements.put(box.id(), new Spot(box.x(), box.y(), box.quarters()).placement());
        }
        return placements;
    }
}
