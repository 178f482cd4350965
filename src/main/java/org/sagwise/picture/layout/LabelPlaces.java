package org.sagwise.picture.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.sagwise.picture.geometry.GridBox;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/** Chooses on which side of each part its figures stand, so that they cover nothing. */
final class LabelPlaces {

    private LabelPlaces() {}

    static List<PartBox> boxes(Scenario scenario, Map<String, Spot> spots, Sizes sizes) {
        List<GridBox> bodies = new ArrayList<>();
        for (Part part : scenario.parts()) {
            bodies.add(sizes.shape(part.kind()).body(spots.get(part.id())));
        }
        List<GridBox> labels = new ArrayList<>();
        List<PartBox> boxes = new ArrayList<>();
        for (Part part : scenario.parts()) {
            Spot spot = spots.get(part.id());
            Footprint best = best(part, spot, sizes, bodies, labels);
            labels.add(best.label());
            boxes.add(PartBox.of(part, spot, best, sizes));
        }
        return boxes;
    }

    private static Footprint best(Part part, Spot spot, Sizes sizes, List<GridBox> bodies, List<GridBox> labels) {
        Footprint best = null;
        double least = Double.MAX_VALUE;
        for (LabelSide side : LabelSide.choices(part.kind(), spot.quarters(), sizes.drawing())) {
            Footprint footprint = Footprint.of(part, spot, side, sizes);
            double covered = covered(footprint.label(), bodies) + covered(footprint.label(), labels);
            if (covered < least) {
                least = covered;
                best = footprint;
            }
        }
        return best;
    }

    private static double covered(GridBox label, List<GridBox> others) {
        double covered = 0;
        for (GridBox other : others) {
            covered += label.commonArea(other);
        }
        return covered;
    }
}
