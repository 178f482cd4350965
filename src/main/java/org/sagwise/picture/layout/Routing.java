package org.sagwise.picture.layout;

import java.util.List;
import org.sagwise.picture.geometry.GridBox;
import org.sagwise.picture.geometry.GridPoint;
import org.sagwise.scenario.Link;

/** Ways of links and what is drawn for them. */
interface Routing {

    /** More links than these are drawn straight: nobody could follow their ways anyway. */
    int MOST_LED = 600;

    /** Ways, in file order. */
    List<LinkRoute> routes();

    /** Wires and stretches of plates. */
    List<Conductor> conductors();

    /**
     * The way of a meter's lead from its display to near a terminal.
     *
     * @param shift how far from the middle of the display's rim it begins
     */
    List<GridPoint> lead(GridBox card, TerminalPoint to, int shift);

    /** Ways of all links between the terminals of these parts. */
    static Routing of(List<Link> links, List<PartBox> parts) {
        return links.size() > MOST_LED || Lattice.isTooLargeFor(parts)
                ? DirectRouting.of(links, parts)
                : Router.route(links, parts);
    }
}
