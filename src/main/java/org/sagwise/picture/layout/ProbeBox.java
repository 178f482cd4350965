package org.sagwise.picture.layout;

import java.util.List;
import java.util.stream.Stream;
import org.sagwise.part.MeterMode;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.GridBox;
import org.sagwise.picture.geometry.GridPoint;
import org.sagwise.picture.geometry.Line;
import org.sagwise.picture.geometry.Point;

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
        GridBox card, TerminalPoint red, List<GridPoint> redLead, TerminalPoint black, List<GridPoint> blackLead) {

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
    GridBox bounds() {
        return Stream.of(redLead, blackLead)
                .flatMap(List::stream)
                .map(GridPoint::box)
                .reduce(card, GridBox::union);
    }

    /** How much larger than usual the body is. */
    public double scale() {
        return (double) card.width() / WIDTH;
    }

    /** The window with the figure. */
    public Box display() {
        double edge = 7 * scale();
        return new Box(card.x() + edge, card.y() + edge, 84 * scale(), card.height() - 2 * edge);
    }

    /** The middle of the knob. */
    public Point knob() {
        return new Point(card.right() - 43 * scale(), card.bottom() - 20 * scale());
    }

    /** Where the letter of a mode stands around the knob. */
    public Point letter(MeterMode mode) {
        double aside = (mode.ordinal() - 1) * 29 * scale();
        double above = (mode == MeterMode.AMPS ? 26 : 4) * scale();
        return new Point(knob().x() + aside, knob().y() - above);
    }

    /** The red probe from the end of its bare tip to where its lead begins. */
    public Line redHandle() {
        return handle(red, redLead);
    }

    /** The black probe. */
    public Line blackHandle() {
        return handle(black, blackLead);
    }

    private static Line handle(TerminalPoint at, List<GridPoint> lead) {
        GridPoint end = lead.get(lead.size() - 1);
        double reach = Math.max(1, end.distance(new GridPoint(at.x(), at.y())));
        return new Line(
                at.x() + NEEDLE * (end.x() - at.x()) / reach,
                at.y() + NEEDLE * (end.y() - at.y()) / reach,
                end.x(),
                end.y());
    }
}
