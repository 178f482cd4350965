package org.sagwise.picture.look;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** Lines across a rectangle, cut at its edges without the help of a clip. */
final class Hatching {

    private Hatching() {}

    /** Lines that rise to the right at 45°, so far apart along the edge. */
    static Path2D of(Rectangle2D area, double spacing) {
        Path2D lines = new Path2D.Double();
        double left = area.getMinX();
        double bottom = area.getMaxY();
        double width = area.getWidth();
        double height = area.getHeight();
        for (double start = spacing / 2 - height; start < width; start += spacing) {
            double from = Math.max(0, start);
            double to = Math.min(width, start + height);
            if (to > from) {
                lines.moveTo(left + from, bottom - (from - start));
                lines.lineTo(left + to, bottom - (to - start));
            }
        }
        return lines;
    }
}
