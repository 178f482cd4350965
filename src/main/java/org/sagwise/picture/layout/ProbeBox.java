package org.sagwise.picture.layout;

import java.awt.Point;
import java.awt.Rectangle;
import java.util.List;

/**
 * Where the meter in the hand stands whose probes rest on two terminals.
 *
 * @param card its display
 * @param red the terminal under the red probe
 * @param redLead corners of the red lead, from the display to the probe's handle
 * @param black the terminal under the black probe
 * @param blackLead corners of the black lead
 */
public record ProbeBox(
        Rectangle card,
        TerminalPoint red,
        List<Point> redLead,
        TerminalPoint black,
        List<Point> blackLead) {

    public ProbeBox {
        redLead = List.copyOf(redLead);
        blackLead = List.copyOf(blackLead);
    }

    /** Display and leads. */
    Rectangle bounds() {
        Rectangle bounds = new Rectangle(card);
        redLead.forEach(bounds::add);
        blackLead.forEach(bounds::add);
        return bounds;
    }
}
