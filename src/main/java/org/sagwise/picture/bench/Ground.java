package org.sagwise.picture.bench;

import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.geometry.Round;
import org.sagwise.picture.layout.PartShape;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.scene.BenchView;

/** The felt on which the bench lies, with its stitched seam, and the grid. */
final class Ground {

    private static final double SEAM_INSET = 8;

    private Ground() {}

    static void felt(ThemedPen pen, BenchView view) {
        pen.fill(new Box(0, 0, view.width(), view.height()), Tone.FELT);
        if (view.width() > 4 * SEAM_INSET && view.height() > 4 * SEAM_INSET) {
            pen.drawDashed(
                    Round.between(SEAM_INSET, SEAM_INSET, view.width() - SEAM_INSET, view.height() - SEAM_INSET, 10),
                    Tone.SEAM,
                    1.6,
                    7,
                    5);
        }
    }

    /** Lines of the grid, in bench units, over what is seen. */
    static void grid(ThemedPen pen, BenchView view) {
        Box seen = view.seen();
        Path.Builder lines = new Path.Builder();
        int step = PartShape.GRID;
        for (double x = Math.ceil(seen.x() / step) * step; x < seen.right(); x += step) {
            lines.moveTo(x, seen.y());
            lines.lineTo(x, seen.bottom());
        }
        for (double y = Math.ceil(seen.y() / step) * step; y < seen.bottom(); y += step) {
            lines.moveTo(seen.x(), y);
            lines.lineTo(seen.right(), y);
        }
        pen.draw(lines.build(), Tone.GRID, 1 / view.scale());
    }
}
