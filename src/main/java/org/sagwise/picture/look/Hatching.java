package org.sagwise.picture.look;

import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Path;

/** Lines across a rectangle, cut at its edges without the help of a clip. */
final class Hatching {

    private Hatching() {}

    /** Lines that rise to the right at 45°, so far apart along the edge. */
    static Path of(Box area, double spacing) {
        Path.Builder lines = new Path.Builder();
        double left = area.x();
        double bottom = area.bottom();
        double width = area.width();
        double height = area.height();
        for (double start = spacing / 2 - height; start < width; start += spacing) {
            double from = Math.max(0, start);
            double to = Math.min(width, start + height);
            if (to > from) {
                lines.moveTo(left + from, bottom - (from - start));
                lines.lineTo(left + to, bottom - (to - start));
            }
        }
        return lines.build();
    }
}
