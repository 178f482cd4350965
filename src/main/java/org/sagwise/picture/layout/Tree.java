package org.sagwise.picture.layout;

import java.awt.Point;
import java.awt.Rectangle;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Lattice cells that one set of plates occupies, and which links pass over which step. */
final class Tree {

    private final Lattice lattice;
    private final Rectangle extent;
    private final Map<Integer, Set<Integer>> neighbours = new LinkedHashMap<>();
    private final Map<Long, List<Conductor.Share>> shares = new HashMap<>();

    Tree(Lattice lattice, int first) {
        this.lattice = lattice;
        this.extent = new Rectangle(lattice.x(first), lattice.y(first), 0, 0);
        neighbours.put(first, new LinkedHashSet<>());
    }

    /** Steps from a cell to the rectangle around the tree: never more than to the tree itself. */
    int stepsFrom(int cell) {
        int x = lattice.x(cell);
        int y = lattice.y(cell);
        int across = Math.max(0, Math.max(extent.x - x, x - extent.x - extent.width));
        int down = Math.max(0, Math.max(extent.y - y, y - extent.y - extent.height));
        return (across + down) / Lattice.STEP;
    }

    boolean has(int cell) {
        return neighbours.containsKey(cell);
    }

    void add(List<Integer> cells) {
        for (int i = 1; i < cells.size(); i++) {
            int one = cells.get(i - 1);
            int other = cells.get(i);
            if (one != other) {
                extent.add(lattice.x(one), lattice.y(one));
                extent.add(lattice.x(other), lattice.y(other));
                neighbours.computeIfAbsent(one, key -> new LinkedHashSet<>()).add(other);
                neighbours.computeIfAbsent(other, key -> new LinkedHashSet<>()).add(one);
            }
        }
    }

    /** Sends a link over the tree; its cells from one end to the other, empty if they are apart. */
    List<Integer> send(int link, int from, int to) {
        List<Integer> way = way(from, to);
        for (int i = 1; i < way.size(); i++) {
            int one = way.get(i - 1);
            int other = way.get(i);
            shares.computeIfAbsent(key(one, other), key -> new ArrayList<>())
                    .add(new Conductor.Share(link, one < other ? 1 : -1));
        }
        return way;
    }

    private List<Integer> way(int from, int to) {
        Map<Integer, Integer> before = new HashMap<>(Map.of(from, from));
        Deque<Integer> open = new ArrayDeque<>(List.of(from));
        while (!open.isEmpty() && !before.containsKey(to)) {
            int cell = open.poll();
            for (int next : neighbours.getOrDefault(cell, Set.of())) {
                if (before.putIfAbsent(next, cell) == null) {
                    open.add(next);
                }
            }
        }
        List<Integer> way = new ArrayList<>();
        for (Integer cell = to; before.containsKey(cell); cell = before.get(cell)) {
            way.add(cell);
            if (cell == from) {
                break;
            }
        }
        Collections.reverse(way);
        return way;
    }

    /** Stretches between places where ways part, each with the links that pass it. */
    List<Conductor> conductors() {
        List<Conductor> conductors = new ArrayList<>();
        Set<Long> done = new LinkedHashSet<>();
        for (int cell : neighbours.keySet()) {
            if (parts(cell)) {
                for (int next : neighbours.get(cell)) {
                    if (shares.containsKey(key(cell, next)) && done.add(key(cell, next))) {
                        conductors.add(stretch(cell, next, done));
                    }
                }
            }
        }
        return conductors;
    }

    private Conductor stretch(int from, int next, Set<Long> done) {
        List<Integer> cells = new ArrayList<>(List.of(from, next));
        int before = from;
        int at = next;
        while (!parts(at)) {
            int behind = before;
            int onward =
                    neighbours.get(at).stream().filter(n -> n != behind).findFirst().orElseThrow();
            done.add(key(at, onward));
            cells.add(onward);
            before = at;
            at = onward;
        }
        boolean up = from < next;
        List<Conductor.Share> along =
                shares.get(key(from, next)).stream()
                        .map(s -> up ? s : new Conductor.Share(s.link(), -s.sign()))
                        .toList();
        return new Conductor(Corners.of(points(cells)), along, false, 0, 0);
    }

    /** Whether a stretch ends here: a fork, an end, or a terminal at which links begin. */
    private boolean parts(int cell) {
        Set<Integer> around = neighbours.get(cell);
        if (around.size() != 2) {
            return true;
        }
        var each = around.iterator();
        return !linksOver(cell, each.next()).equals(linksOver(cell, each.next()));
    }

    private Set<Integer> linksOver(int one, int other) {
        Set<Integer> links = new LinkedHashSet<>();
        shares.getOrDefault(key(one, other), List.of()).forEach(share -> links.add(share.link()));
        return links;
    }

    private List<Point> points(List<Integer> cells) {
        return cells.stream().map(c -> new Point(lattice.x(c), lattice.y(c))).toList();
    }

    private static long key(int one, int other) {
        return (long) Math.min(one, other) << 32 | Math.max(one, other);
    }
}
