package org.sagwise.picture.bench;

import org.sagwise.picture.layout.ProbeBox;
import org.sagwise.picture.layout.TerminalPoint;
import org.sagwise.picture.look.Align;
import org.sagwise.picture.look.Pen;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.Figures;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.ProbeReading;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.geom.Path2D;
import java.util.List;

/** The meter in the hand: its display, its leads and the two probes on their terminals. */
final class ProbePainter {

    private static final double NEEDLE = 13;

    private ProbePainter() {}

    static void paint(Pen pen, BenchScene scene, ProbeBox box) {
        Rectangle card = box.card();
        probe(pen, box.blackLead(), box.black(), Tone.PROBE_BLACK);
        probe(pen, box.redLead(), box.red(), Tone.PROBE_RED);
        pen.plate(
                Shapes.box(card.x, card.y, card.getMaxX(), card.getMaxY()),
                9,
                Tone.PAPER,
                Tone.EDGE,
                1.8);
        Figures figures = Figures.of(scene);
        double volts = scene.readings().probes().map(ProbeReading::voltsV).orElse(Double.NaN);
        pen.textFit(
                figures.print(volts, Unit.VOLT),
                card.getCenterX(),
                card.getCenterY() + 6 * pen.textScale(),
                card.width - 12,
                TextStyle.FIGURE,
                Tone.INK,
                Align.MIDDLE);
    }

    /** A lead, and the probe that reaches from its end to the terminal. */
    private static void probe(Pen pen, List<Point> lead, TerminalPoint at, Tone colour) {
        Point end = lead.get(lead.size() - 1);
        double reach = Math.max(1, end.distance(at.x(), at.y()));
        double ux = (end.x - at.x()) / reach;
        double uy = (end.y - at.y()) / reach;
        Path2D way = SoftPath.shape(lead, 34);
        pen.draw(way, Tone.CONDUCTOR_EDGE, 4);
        pen.draw(way, colour, 2.4);
        double tipX = at.x() + NEEDLE * ux;
        double tipY = at.y() + NEEDLE * uy;
        pen.line(at.x(), at.y(), tipX, tipY, Tone.CONDUCTOR_EDGE, 5);
        pen.line(at.x(), at.y(), tipX, tipY, Tone.METAL_LIGHT, 2.4);
        pen.line(tipX, tipY, end.x, end.y, Tone.CONDUCTOR_EDGE, 11);
        pen.line(tipX, tipY, end.x, end.y, colour, 8);
    }
}
