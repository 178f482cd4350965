package org.sagwise.ui.staircase;

import java.util.Optional;
import org.sagwise.picture.pen.Pen;
import org.sagwise.picture.stairs.StairScene;
import org.sagwise.picture.stairs.StaircasePainter;
import org.sagwise.ui.kit.Painting;

/** One picture of the stairs. It remembers where its steps lie. */
final class Stairs implements Painting {

    private final StairScene scene;
    private volatile StaircasePainter painter;

    Stairs(StairScene scene) {
        this.scene = scene;
    }

    @Override
    public void paint(Pen graphics, double width, double height) {
        StaircasePainter fresh = StaircasePainter.of(scene, width, height);
        fresh.paint(graphics);
        painter = fresh;
    }

    /** Where the steps lie; empty before it was painted. */
    Optional<StaircasePainter> painter() {
        return Optional.ofNullable(painter);
    }
}
