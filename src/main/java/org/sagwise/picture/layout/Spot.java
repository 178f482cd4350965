package org.sagwise.picture.layout;

import org.sagwise.picture.geometry.GridPoint;
import org.sagwise.scenario.Placement;

/**
 * Where a part lies: its middle in bench units, on the lattice, and how it is turned.
 *
 * @param x middle, from the left
 * @param y middle, from the top
 * @param quarters quarter turns clockwise, 0 to 3
 */
record Spot(int x, int y, int quarters) {

    Spot {
        quarters = Math.floorMod(quarters, 4);
    }

    /** The lattice place and quarter turn nearest to a written placement. */
    static Spot nearest(Placement placement) {
        return new Spot(
                toLattice(placement.x() * PartShape.GRID),
                toLattice(placement.y() * PartShape.GRID),
                GridPoint.whole(placement.turnDegrees() / 90.0) % 4);
    }

    static int toLattice(double units) {
        return GridPoint.whole(units / PartShape.LATTICE) * PartShape.LATTICE;
    }

    Spot moved(int dx, int dy) {
        return new Spot(x + dx, y + dy, quarters);
    }

    Placement placement() {
        return new Placement((double) x / PartShape.GRID, (double) y / PartShape.GRID, quarters * 90.0);
    }
}
