package org.sagwise.picture.layout;

import java.awt.Rectangle;
import org.sagwise.scenario.Part;

/**
 * The room that a part takes: its outline and the place of its figures.
 *
 * @param body its outline
 * @param label the place of its figures
 * @param side where they stand
 */
record Footprint(Rectangle body, Rectangle label, LabelSide side) {

    private static final int MARGIN = 14;

    /** The room of a part whose figures stand on their best side. */
    static Footprint of(Part part, Spot spot, Sizes sizes) {
        LabelSide side =
                LabelSide.choices(part.kind(), spot.quarters(), sizes.drawing()).get(0);
        return of(part, spot, side, sizes);
    }

    static Footprint of(Part part, Spot spot, LabelSide side, Sizes sizes) {
        Rectangle body = sizes.shape(part.kind()).body(spot);
        return new Footprint(body, side.place(part.kind(), body, sizes), side);
    }

    /** Outline, figures and a margin. */
    Rectangle room() {
        Rectangle room = body.union(label);
        room.grow(MARGIN, MARGIN);
        return room;
    }
}
