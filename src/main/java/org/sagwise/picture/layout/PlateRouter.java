package org.sagwise.picture.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Joins terminals by one set of plates: each to the nearest of those that are joined already. */
final class PlateRouter {

    private final Lattice lattice;
    private final WaySearch search;
    private final int owner;

    PlateRouter(Lattice lattice, WaySearch search, int owner) {
        this.lattice = lattice;
        this.search = search;
        this.owner = owner;
    }

    Tree join(List<TerminalPoint> terminals) {
        List<TerminalPoint> joined = new ArrayList<>(List.of(terminals.get(0)));
        Tree tree = new Tree(lattice, cell(joined.get(0)));
        List<Waiting> waiting =
                new ArrayList<>(terminals.stream().skip(1).map(Waiting::new).toList());
        while (!waiting.isEmpty()) {
            TerminalPoint newest = joined.get(joined.size() - 1);
            waiting.forEach(it -> it.hearOf(newest));
            Waiting next = waiting.stream()
                    .min(Comparator.comparingInt(it -> it.distance))
                    .orElseThrow();
            waiting.remove(next);
            List<Integer> way = wayTo(tree, next.point, joined);
            tree.add(way);
            lattice.claim(way, owner);
            joined.add(next.point);
        }
        return tree;
    }

    /** A terminal that is not joined yet, and how far away the nearest is that is. */
    private static final class Waiting {
        private final TerminalPoint point;
        private int distance = Integer.MAX_VALUE;

        private Waiting(TerminalPoint point) {
            this.point = point;
        }

        private void hearOf(TerminalPoint joined) {
            int across = Math.abs(point.x() - joined.x());
            distance = Math.min(distance, across + Math.abs(point.y() - joined.y()));
        }
    }

    private List<Integer> wayTo(Tree tree, TerminalPoint next, List<TerminalPoint> joined) {
        Optional<TerminalPoint> facing =
                joined.stream().filter(point -> Stub.face(lattice, next, point)).findFirst();
        if (facing.isPresent()) {
            return untilTree(tree, Stub.straight(lattice, next, facing.get()));
        }
        if (joined.size() == 1) {
            List<Integer> stub = Stub.of(lattice, joined.get(0));
            tree.add(stub);
            lattice.claim(stub, owner);
        }
        List<Integer> way = untilTree(tree, Stub.of(lattice, next));
        int start = way.get(way.size() - 1);
        if (!tree.has(start)) {
            way.addAll(search.find(start, next.out(), goal(tree, joined), owner)
                    .orElseGet(() -> elbow(start, cell(joined.get(0)))));
        }
        return way;
    }

    private List<Integer> elbow(int start, int goal) {
        return List.of(lattice.corner(start, goal), goal);
    }

    private WaySearch.Goal goal(Tree tree, List<TerminalPoint> joined) {
        if (joined.size() == 1) {
            List<Integer> stub = Stub.of(lattice, joined.get(0));
            return WaySearch.at(
                    lattice, stub.get(stub.size() - 1), joined.get(0).out());
        }
        return new WaySearch.Goal() {
            @Override
            public boolean isAt(int cell) {
                return tree.has(cell) && !lattice.isBlocked(cell);
            }

            @Override
            public int stepsFrom(int cell) {
                return tree.stepsFrom(cell);
            }

            @Override
            public int arrivalCost(Bearing way) {
                return 0;
            }
        };
    }

    /** The cells up to the first one that belongs to the tree, that one included. */
    private static List<Integer> untilTree(Tree tree, List<Integer> cells) {
        List<Integer> way = new ArrayList<>();
        for (int cell : cells) {
            way.add(cell);
            if (tree.has(cell)) {
                break;
            }
        }
        return way;
    }

    private int cell(TerminalPoint point) {
        return lattice.cell(point.x(), point.y());
    }
}
