package org.sagwise.picture.bench;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.sagwise.picture.layout.PartShape;
import org.sagwise.picture.look.Pen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.scene.BenchView;

/** The felt on which the bench lies, with its stitched seam, and the grid. */
final class Ground {

    private static final double SEAM_INSET = 8;

    private Ground() {}

    static void felt(Pen pen, BenchView view) {
        pen.fill(new Rectangle2D.Double(0, 0, view.width(), view.height()), Tone.FELT);
        if (view.width() > 4 * SEAM_INSET && view.height() > 4 * SEAM_INSET) {
            pen.drawDashed(
                    Shapes.round(SEAM_INSET, SEAM_INSET, view.width() - SEAM_INSET, view.height() - SEAM_INSET, 10),
                    Tone.SEAM,
                    1.6f,
                    7,
                    5);
        }
    }

    /** Lines of the grid, in bench units, over what is seen. */
    static void grid(Pen pen, BenchView view) {
        Rectangle2D seen = view.seen();
        Path2D lines = new Path2D.Double();
        int step = PartShape.GRID;
        for (double x = Math.ceil(seen.getMinX() / step) * step; x < seen.getMaxX(); x += step) {
            lines.moveTo(x, seen.getMinY());
            lines.lineTo(x, seen.getMaxY());
        }
        for (double y = Math.ceil(seen.getMinY() / step) * step; y < seen.getMaxY(); y += step) {
            lines.moveTo(seen.getMinX(), y);
            lines.lineTo(seen.getMaxX(), y);
        }
        pen.draw(lines, Tone.GRID, 1 / view.scale());
    }
}
