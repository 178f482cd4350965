package org.sagwise.picture.layout;

import org.sagwise.part.PartKind;

/**
 * What sizes a layout is made for.
 *
 * @param textScale size of figures and notes against the usual one
 * @param drawing whether parts are drawn as things or as symbols
 */
record Sizes(double textScale, Drawing drawing) {

    PartShape shape(PartKind kind) {
        return PartShape.of(kind, drawing);
    }
}
