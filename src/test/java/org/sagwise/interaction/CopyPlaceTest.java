package org.sagwise.interaction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.sagwise.part.PartKind;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.picture.layout.PartShape;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Placement;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.edit.AddPart;
import org.sagwise.scenario.edit.FreshIds;

class CopyPlaceTest {

    private static final Point MIDDLE = new Point(400, 200);

    @Test
    void near_emptyBench_isThePointItself() {
        assertEquals(MIDDLE, CopyPlace.near(layout(Scenario.empty()), PartKind.CELL, MIDDLE));
    }

    @Test
    void near_partAfterPart_laysNoneOnAnother() {
        Scenario bench = Scenario.empty();
        for (PartKind kind : List.of(PartKind.CELL, PartKind.CELL, PartKind.COIL, PartKind.SWITCH, PartKind.BOARD)) {
            Point at = CopyPlace.near(layout(bench), kind, MIDDLE);
            PartShape shape = PartShape.of(kind, Drawing.BENCH);
            Box body = new Box(
                    at.x() - shape.halfWidth(),
                    at.y() - shape.halfHeight(),
                    2 * shape.halfWidth(),
                    2 * shape.halfHeight());
            layout(bench).parts().forEach(box -> assertFalse(box.body().box().intersects(body), kind + " " + at));
            Part part = Part.of(new FreshIds(bench).next(kind), kind);
            bench = new AddPart(part, new Placement(at.x() / PartShape.GRID, at.y() / PartShape.GRID, 0)).apply(bench);
        }
    }

    private static BenchLayout layout(Scenario bench) {
        return BenchLayout.of(bench, 1, Drawing.BENCH);
    }
}
