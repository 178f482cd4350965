package org.sagwise.picture.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.sagwise.picture.geometry.GridBox;
import org.sagwise.picture.geometry.GridPoint;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/** Finds room for parts that have none yet, near what they are joined to. */
final class FreeSpots {

    private static final int RINGS = 30;
    private static final int CLEAR = PartShape.LATTICE;

    /** Lines out of two symbols that face each other must not end at the same point. */
    private static final int CLEAR_OF_SYMBOLS = 3 * PartShape.LATTICE;

    private final Scenario scenario;
    private final Sizes sizes;
    private final Map<String, Spot> spots = new LinkedHashMap<>();
    private final RoomIndex taken = new RoomIndex();

    FreeSpots(Scenario scenario, Sizes sizes) {
        this.scenario = scenario;
        this.sizes = sizes;
    }

    /** The given spots, and one for every part that has none, in file order. */
    Map<String, Spot> completed(Map<String, Spot> given) {
        for (Part part : scenario.parts()) {
            if (given.containsKey(part.id())) {
                take(part, given.get(part.id()));
            }
        }
        for (Part part : scenario.parts()) {
            if (!given.containsKey(part.id())) {
                take(part, freeNear(part, wanted(part)));
            }
        }
        Map<String, Spot> ordered = new LinkedHashMap<>();
        scenario.parts().forEach(part -> ordered.put(part.id(), spots.get(part.id())));
        return ordered;
    }

    /**
     * Spots that are wanted, kept where they are free of the fixed ones and moved where they are
     * not.
     */
    Map<String, Spot> completed(Map<String, Spot> fixed, Map<String, Spot> wanted) {
        Map<String, Spot> kept = new LinkedHashMap<>(fixed);
        List<GridBox> rooms = new ArrayList<>();
        for (Part part : scenario.parts()) {
            if (fixed.containsKey(part.id())) {
                rooms.add(Footprint.of(part, fixed.get(part.id()), sizes).room());
            }
        }
        for (Part part : scenario.parts()) {
            Spot spot = wanted.get(part.id());
            GridBox room = Footprint.of(part, spot, sizes).room();
            if (!fixed.containsKey(part.id()) && rooms.stream().noneMatch(room::intersects)) {
                kept.put(part.id(), spot);
            }
        }
        return completed(kept);
    }

    private void take(Part part, Spot spot) {
        spots.put(part.id(), spot);
        taken.add(Footprint.of(part, spot, sizes).room());
    }

    /** The middle of the parts that this one is joined to; the middle of all if to none. */
    private GridPoint wanted(Part part) {
        List<Spot> joined = new ArrayList<>();
        for (Link link : scenario.links()) {
            if (link.touches(part.id())) {
                boolean fromHere = link.from().part().equals(part.id());
                Spot other = spots.get(fromHere ? link.to().part() : link.from().part());
                if (other != null) {
                    joined.add(other);
                }
            }
        }
        List<Spot> all = joined.isEmpty() ? new ArrayList<>(spots.values()) : joined;
        return new GridPoint(
                Spot.toLattice(all.stream().mapToInt(Spot::x).average().orElse(0)),
                Spot.toLattice(all.stream().mapToInt(Spot::y).average().orElse(0)));
    }

    /** The nearest free spot, looking right, below, left and above in growing rings. */
    private Spot freeNear(Part part, GridPoint middle) {
        for (int ring = 0; ring < RINGS; ring++) {
            int far = ring * PartShape.GRID;
            for (int along = -far; along <= far; along += PartShape.GRID) {
                for (GridPoint offset : List.of(
                        new GridPoint(far, along),
                        new GridPoint(along, far),
                        new GridPoint(-far, along),
                        new GridPoint(along, -far))) {
                    Spot spot = new Spot(middle.x() + offset.x(), middle.y() + offset.y(), 0);
                    if (isFree(part, spot)) {
                        return spot;
                    }
                }
            }
        }
        return belowAll(part, middle);
    }

    private boolean isFree(Part part, Spot spot) {
        GridBox room = Footprint.of(part, spot, sizes).room();
        int clear = sizes.drawing() == Drawing.BENCH ? CLEAR : CLEAR_OF_SYMBOLS;
        return taken.isFree(room.grown(clear));
    }

    private Spot belowAll(Part part, GridPoint middle) {
        int lowest = taken.lowest();
        Spot trial = new Spot(middle.x(), 0, 0);
        int above = -Footprint.of(part, trial, sizes).room().y();
        return new Spot(middle.x(), Spot.toLattice(lowest + above + PartShape.GRID), 0);
    }
}
