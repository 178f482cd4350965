package org.sagwise.picture.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.sagwise.errand.Errand;
import org.sagwise.picture.geometry.GridBox;
import org.sagwise.picture.geometry.GridPoint;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.TerminalRef;

/** Leads every link from terminal to terminal: plates first, then wires, the short ones first. */
final class Router implements Routing {

    private static final int BUDGET = 1_500_000;

    private final List<Link> links;
    private final Map<TerminalRef, TerminalPoint> points = new HashMap<>();
    private final Lattice lattice;
    private final WaySearch search;
    private final PlateGroups groups;
    private final Map<Integer, LinkRoute> routes = new TreeMap<>();
    private final List<Conductor> conductors = new ArrayList<>();

    private Router(List<Link> links, List<PartBox> parts) {
        this.links = links;
        parts.forEach(part -> part.terminals().forEach(point -> points.put(point.ref(), point)));
        this.lattice = new Lattice(parts);
        this.groups = new PlateGroups(links);
        this.search = new WaySearch(lattice, groups::kinship, BUDGET);
    }

    /** Ways of all links between the terminals of these parts. */
    static Router route(List<Link> links, List<PartBox> parts) {
        Router router = new Router(links, parts);
        router.reserveStubs();
        router.groups.plates().forEach(router::plates);
        router.wires().forEach(router::wire);
        return router;
    }

    @Override
    public List<LinkRoute> routes() {
        return List.copyOf(routes.values());
    }

    @Override
    public List<Conductor> conductors() {
        return conductors;
    }

    @Override
    public List<GridPoint> lead(GridBox card, TerminalPoint to, int shift) {
        return new LeadRouter(lattice, search).lead(card, to, shift);
    }

    /** Keeps others away from where conductors will leave their terminals. */
    private void reserveStubs() {
        for (int i = 0; i < links.size(); i++) {
            if (isBetweenParts(links.get(i))) {
                for (TerminalRef end : List.of(links.get(i).from(), links.get(i).to())) {
                    lattice.claim(Stub.of(lattice, points.get(end)), groups.ownerOf(i));
                }
            }
        }
    }

    private boolean isBetweenParts(Link link) {
        return points.containsKey(link.from()) && points.containsKey(link.to());
    }

    private List<Integer> wires() {
        List<Integer> wires = new ArrayList<>();
        for (int i = 0; i < links.size(); i++) {
            if (links.get(i).joint() instanceof Joint.Jumper && isBetweenParts(links.get(i))) {
                wires.add(i);
            }
        }
        wires.sort(Comparator.comparingInt(this::span));
        return wires;
    }

    private int span(int link) {
        TerminalPoint from = points.get(links.get(link).from());
        TerminalPoint to = points.get(links.get(link).to());
        return Math.abs(from.x() - to.x()) + Math.abs(from.y() - to.y());
    }

    private void wire(int index) {
        Errand.heed();
        TerminalPoint from = points.get(links.get(index).from());
        TerminalPoint to = points.get(links.get(index).to());
        int owner = groups.ownerOf(index);
        List<Integer> start = Stub.of(lattice, from);
        List<Integer> end = Stub.of(lattice, to);
        List<Integer> cells = new ArrayList<>(start);
        if (Stub.face(lattice, from, to)) {
            cells = Stub.straight(lattice, from, to);
        } else {
            int goal = last(end);
            cells.addAll(search.find(last(start), from.out(), WaySearch.at(lattice, goal, to.out()), owner)
                    .orElse(List.of(lattice.corner(last(start), goal), goal)));
            cells.addAll(reversed(end));
        }
        lattice.claim(cells, owner);
        List<GridPoint> corners = corners(cells);
        routes.put(index, new LinkRoute(index, corners));
        conductors.add(new Conductor(
                corners,
                List.of(new Conductor.Share(index, 1)),
                true,
                groups.isShared(links.get(index).from()) ? Arranger.STUB : 0,
                groups.isShared(links.get(index).to()) ? Arranger.STUB : 0));
    }

    private void plates(List<Integer> group) {
        List<Integer> inside =
                group.stream().filter(index -> isBetweenParts(links.get(index))).toList();
        if (inside.isEmpty()) {
            return;
        }
        Errand.heed();
        Map<TerminalRef, TerminalPoint> terminals = new LinkedHashMap<>();
        for (int index : inside) {
            Link link = links.get(index);
            terminals.put(link.from(), points.get(link.from()));
            terminals.put(link.to(), points.get(link.to()));
        }
        int owner = groups.ownerOf(inside.get(0));
        Tree tree = new PlateRouter(lattice, search, owner).join(new ArrayList<>(terminals.values()));
        for (int index : inside) {
            Link link = links.get(index);
            List<Integer> way = tree.send(index, cell(link.from()), cell(link.to()));
            routes.put(index, new LinkRoute(index, corners(way)));
        }
        conductors.addAll(tree.conductors());
    }

    private int cell(TerminalRef terminal) {
        TerminalPoint point = points.get(terminal);
        return lattice.cell(point.x(), point.y());
    }

    private List<GridPoint> corners(List<Integer> cells) {
        return Corners.of(cells.stream()
                .map(c -> new GridPoint(lattice.x(c), lattice.y(c)))
                .toList());
    }

    private static int last(List<Integer> cells) {
        return cells.get(cells.size() - 1);
    }

    private static List<Integer> reversed(List<Integer> cells) {
        List<Integer> backward = new ArrayList<>(cells);
        java.util.Collections.reverse(backward);
        return backward;
    }
}
