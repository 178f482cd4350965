package org.sagwise.picture.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.sagwise.picture.geometry.GridBox;
import org.sagwise.picture.geometry.GridPoint;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.TerminalRef;

/**
 * Ways with one corner that heed nothing: for parts so far apart that no lattice can span them.
 *
 * @param routes ways, in file order
 * @param conductors one for each
 */
record DirectRouting(List<LinkRoute> routes, List<Conductor> conductors) implements Routing {

    static DirectRouting of(List<Link> links, List<PartBox> parts) {
        Map<TerminalRef, GridPoint> points = new HashMap<>();
        parts.forEach(part -> part.terminals().forEach(t -> points.put(t.ref(), new GridPoint(t.x(), t.y()))));
        List<LinkRoute> routes = new ArrayList<>();
        List<Conductor> conductors = new ArrayList<>();
        for (int i = 0; i < links.size(); i++) {
            GridPoint from = points.get(links.get(i).from());
            GridPoint to = points.get(links.get(i).to());
            if (from != null && to != null) {
                List<GridPoint> way = Corners.of(List.of(from, new GridPoint(to.x(), from.y()), to));
                routes.add(new LinkRoute(i, way));
                conductors.add(
                        new Conductor(way, List.of(new Conductor.Share(i, 1)), PlateGroups.isWire(links.get(i)), 0, 0));
            }
        }
        return new DirectRouting(routes, conductors);
    }

    @Override
    public List<GridPoint> lead(GridBox card, TerminalPoint to, int shift) {
        return List.of(new GridPoint((int) card.middleX(), card.y()), new GridPoint(to.x() - 20, to.y()));
    }
}
