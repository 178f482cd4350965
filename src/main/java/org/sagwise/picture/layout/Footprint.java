package org.sagwise.picture.layout;

import org.sagwise.picture.geometry.GridBox;
import org.sagwise.scenario.Part;

/**
 * The room that a part takes: its outline and the place of its figures.
 *
 * @param body its outline
 * @param label the place of its figures
 * @param side where they stand
 */
record Footprint(GridBox body, GridBox label, LabelSide side) {

    private static final int MARGIN = 14;

    /** The room of a part whose figures stand on their best side. */
    static Footprint of(Part part, Spot spot, Sizes sizes) {
        LabelSide side =
                LabelSide.choices(part.kind(), spot.quarters(), sizes.drawing()).get(0);
        return of(part, spot, side, sizes);
    }

    static Footprint of(Part part, Spot spot, LabelSide side, Sizes sizes) {
        GridBox body = sizes.shape(part.kind()).body(spot);
        return new Footprint(body, side.place(part.kind(), body, sizes), side);
    }

    /** Outline, figures and a margin. */
    GridBox room() {
        return body.union(label).grown(MARGIN);
    }
}
