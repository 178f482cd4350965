package org.sagwise.picture.layout;

import org.sagwise.scenario.Link;
import org.sagwise.scenario.TerminalRef;

import java.awt.Point;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Ways of links and what is drawn for them.
 *
 * @param routes ways, in file order
 * @param conductors wires and stretches of plates
 */
record Routing(List<LinkRoute> routes, List<Conductor> conductors) {

    /** Ways with one corner that heed nothing: for benches that no lattice can span. */
    static Routing direct(List<Link> links, List<PartBox> parts) {
        Map<TerminalRef, Point> points = new HashMap<>();
        parts.forEach(
                part ->
                        part.terminals()
                                .forEach(t -> points.put(t.ref(), new Point(t.x(), t.y()))));
        List<LinkRoute> routes = new ArrayList<>();
        List<Conductor> conductors = new ArrayList<>();
        for (int i = 0; i < links.size(); i++) {
            Point from = points.get(links.get(i).from());
            Point to = points.get(links.get(i).to());
            if (from != null && to != null) {
                List<Point> way = Corners.of(List.of(from, new Point(to.x, from.y), to));
                routes.add(new LinkRoute(i, way));
                conductors.add(
                        new Conductor(
                                way,
                                List.of(new Conductor.Share(i, 1)),
                                PlateGroups.isWire(links.get(i)),
                                0,
                                0));
            }
        }
        return new Routing(routes, conductors);
    }
}
