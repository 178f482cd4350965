package org.sagwise.picture.layout;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.sagwise.part.MeterMode;

/**
 * Where the meter in the hand stands whose probes rest on two terminals.
 *
 * @param card its body
 * @param red the terminal under the red probe
 * @param redLead corners of the red lead, from the body to the probe's handle
 * @param black the terminal under the black probe
 * @param blackLead corners of the black lead
 */
public record ProbeBox(
        Rectangle card, TerminalPoint red, List<Point> redLead, TerminalPoint black, List<Point> blackLead) {

    /** Size of the body where text has its usual size. */
    static final int WIDTH = 176;

    static final int HEIGHT = 62;

    /** Length of the bare tip of a probe. */
    private static final double NEEDLE = 13;

    public ProbeBox {
        redLead = List.copyOf(redLead);
        blackLead = List.copyOf(blackLead);
    }

    /** Body and leads. */
    Rectangle bounds() {
        Rectangle bounds = new Rectangle(card);
        redLead.forEach(bounds::add);
        blackLead.forEach(bounds::add);
        return bounds;
    }

    /** How much larger than usual the body is. */
    public double scale() {
        return card.getWidth() / WIDTH;
    }

    /** The window with the figure. */
    public Rectangle2D display() {
        double edge = 7 * scale();
        return new Rectangle2D.Double(card.x + edge, card.y + edge, 84 * scale(), card.height - 2 * edge);
    }

    /** The middle of the knob. */
    public Point2D knob() {
        return new Point2D.Double(card.getMaxX() - 43 * scale(), card.getMaxY() - 20 * scale());
    }

    /** Where the letter of a mode stands around the knob. */
    public Point2D letter(MeterMode mode) {
        double aside = (mode.ordinal() - 1) * 29 * scale();
        double above = (mode == MeterMode.AMPS ? 26 : 4) * scale();
        return new Point2D.Double(knob().getX() + aside, knob().getY() - above);
    }

    /** The red probe from the end of its bare tip to where its lead begins. */
    public Line2D redHandle() {
        return handle(red, redLead);
    }

    /** The black probe. */
    public Line2D blackHandle() {
        return handle(black, blackLead);
    }

    private static Line2D handle(TerminalPoint at, List<Point> lead) {
        Point end = lead.get(lead.size() - 1);
        double reach = Math.max(1, end.distance(at.x(), at.y()));
        return new Line2D.Double(
                at.x() + NEEDLE * (end.x - at.x()) / reach, at.y() + NEEDLE * (end.y - at.y()) / reach, end.x, end.y);
    }
}
