package org.sagwise.picture.plot;

import org.sagwise.picture.geometry.Box;

/**
 * Where the values of a chart lie in its picture.
 *
 * @param area what lies between the axes
 */
record Frame(Box area, PlotScale across, PlotScale up) {

    double x(double value) {
        return area.x() + across.share(value) * area.width();
    }

    double y(double value) {
        return area.bottom() - up.share(value) * area.height();
    }

    double valueAtX(double x) {
        return across.valueAt((x - area.x()) / area.width());
    }

    double valueAtY(double y) {
        return up.valueAt((area.bottom() - y) / area.height());
    }
}
