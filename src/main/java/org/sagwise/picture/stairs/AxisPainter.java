package org.sagwise.picture.stairs;

import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Align;
import org.sagwise.quantity.Digits;
import org.sagwise.quantity.Unit;

/** Level lines with their volts. */
final class AxisPainter {

    private static final double LEAST_SPACING = 21;

    private AxisPainter() {}

    /** Draws lines from one x to another, volts left of them. */
    static void paint(ThemedPen pen, StairAxis axis, double left, double right, StairWords words) {
        double spacing = LEAST_SPACING * pen.textScale();
        int decimals = decimals(axis.tickV(spacing));
        for (double tick : axis.ticks(spacing)) {
            double y = axis.y(tick);
            pen.line(left - 4, y, right, y, Tone.PAPER_EDGE, 0.8);
            pen.text(
                    words.figures().numbers().print(tick - axis.zeroV(), Unit.VOLT.base(), Digits.decimals(decimals)),
                    left - 8,
                    y + 4 * pen.textScale(),
                    TextStyle.SMALL,
                    Tone.MUTED,
                    Align.RIGHT);
        }
    }

    private static int decimals(double step) {
        return Math.max(0, (int) Math.ceil(-Math.log10(step) - 1e-9));
    }
}
