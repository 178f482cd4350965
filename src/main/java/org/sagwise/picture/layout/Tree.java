package org.sagwise.picture.layout;

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
import org.sagwise.picture.geometry.GridBox;
import org.sagwise.picture.geometry.GridPoint;

/** Lattice cells that one set of plates occupies, and which links pass over which step. */
final class Tree {

    /** How many cells the searches for the shortest ways of all links together may look at. */
    private static final long BUDGET = 1_000_000;

    private static final int NOWHERE = -1;

    private final Lattice lattice;
    private GridBox extent;
    private final Map<Integer, Set<Integer>> neighbours = new LinkedHashMap<>();
    private final Map<Long, List<Conductor.Share>> shares = new HashMap<>();
    private final int root;
    private final Map<Integer, Integer> towardsRoot = new HashMap<>();
    private long budget = BUDGET;

    Tree(Lattice lattice, int first) {
        this.lattice = lattice;
        this.extent = point(first).box();
        this.root = first;
        neighbours.put(first, new LinkedHashSet<>());
    }

    /** Steps from a cell to the rectangle around the tree: never more than to the tree itself. */
    int stepsFrom(int cell) {
        int x = lattice.x(cell);
        int y = lattice.y(cell);
        int across = Math.max(0, Math.max(extent.x() - x, x - extent.x() - extent.width()));
        int down = Math.max(0, Math.max(extent.y() - y, y - extent.y() - extent.height()));
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
                extent = extent.union(point(one).box()).union(point(other).box());
                neighbours.computeIfAbsent(one, key -> new LinkedHashSet<>()).add(other);
                neighbours.computeIfAbsent(other, key -> new LinkedHashSet<>()).add(one);
            }
        }
    }

    /** Sends a link over the tree; its cells from one end to the other, empty if they are apart. */
    List<Integer> send(int link, int from, int to) {
        List<Integer> way = budget > 0 ? shortestWay(from, to) : wayByRoot(from, to);
        for (int i = 1; i < way.size(); i++) {
            int one = way.get(i - 1);
            int other = way.get(i);
            shares.computeIfAbsent(key(one, other), key -> new ArrayList<>())
                    .add(new Conductor.Share(link, one < other ? 1 : -1));
        }
        return way;
    }

    private List<Integer> shortestWay(int from, int to) {
        Map<Integer, Integer> before = reach(from, to);
        budget -= before.size();
        List<Integer> way = trace(before, to);
        Collections.reverse(way);
        return way;
    }

    /** Where one came from to every cell, nearest cells first, until a cell is reached. */
    private Map<Integer, Integer> reach(int from, int to) {
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
        return before;
    }

    /** Cells from one back to where its search began; empty if it was not reached. */
    private static List<Integer> trace(Map<Integer, Integer> before, int end) {
        List<Integer> way = new ArrayList<>();
        Integer cell = before.containsKey(end) ? end : null;
        while (cell != null) {
            way.add(cell);
            Integer next = before.get(cell);
            cell = next.equals(cell) ? null : next;
        }
        return way;
    }

    /** A way by where the ways of both ends to the root meet: quick, and mostly the only one. */
    private List<Integer> wayByRoot(int from, int to) {
        if (towardsRoot.isEmpty()) {
            towardsRoot.putAll(reach(root, NOWHERE));
        }
        List<Integer> up = trace(towardsRoot, from);
        List<Integer> down = trace(towardsRoot, to);
        if (up.isEmpty() || down.isEmpty()) {
            return List.of();
        }
        int shared = 0;
        while (shared < Math.min(up.size(), down.size())
                && up.get(up.size() - 1 - shared).equals(down.get(down.size() - 1 - shared))) {
            shared++;
        }
        List<Integer> way = new ArrayList<>(up.subList(0, up.size() - shared + 1));
        List<Integer> back = down.subList(0, down.size() - shared);
        Collections.reverse(back);
        way.addAll(back);
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
            int onward = neighbours.get(at).stream()
                    .filter(n -> n != behind)
                    .findFirst()
                    .orElseThrow();
            done.add(key(at, onward));
            cells.add(onward);
            before = at;
            at = onward;
        }
        boolean up = from < next;
        List<Conductor.Share> along = shares.get(key(from, next)).stream()
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
        return !areOfTheSameLinks(sharesOver(cell, each.next()), sharesOver(cell, each.next()));
    }

    private List<Conductor.Share> sharesOver(int one, int other) {
        return shares.getOrDefault(key(one, other), List.of());
    }

    /** Each link passes a step once, and they were sent in the same order: of hundreds, no set need be made. */
    private static boolean areOfTheSameLinks(List<Conductor.Share> some, List<Conductor.Share> others) {
        if (some.size() != others.size()) {
            return false;
        }
        for (int i = 0; i < some.size(); i++) {
            if (some.get(i).link() != others.get(i).link()) {
                return false;
            }
        }
        return true;
    }

    private List<GridPoint> points(List<Integer> cells) {
        return cells.stream().map(this::point).toList();
    }

    private GridPoint point(int cell) {
        return new GridPoint(lattice.x(cell), lattice.y(cell));
    }

    private static long key(int one, int other) {
        return (long) Math.min(one, other) << 32 | Math.max(one, other);
    }
}
