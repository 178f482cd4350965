package org.sagwise.picture.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.sagwise.part.MeterMode;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/** Finds packs, loads and loose parts in a scenario. */
final class Planner {

    /** Past this a piece is no bench any more, and taking it apart would take too long. */
    private static final int MOST_PARTS = 250;

    /** More parts than this would make layers too wide to be seen. */
    private static final int MOST_LAYERED = 60;

    private final Scenario scenario;
    private final Drawing drawing;
    private final Joints joints;

    private Planner(Scenario scenario, Drawing drawing) {
        this.drawing = drawing;
        this.scenario = scenario;
        this.joints = Joints.of(scenario);
    }

    /** Plans of all pieces, the one first with which the bench begins. */
    static List<Plan> of(Scenario scenario, Drawing drawing) {
        return new Planner(scenario, drawing).plans();
    }

    /** On the bench a voltmeter hangs beside what it measures and is no part of the way. */
    static boolean isVoltmeter(Part part) {
        return part.isTurnedTo(MeterMode.VOLTS);
    }

    private List<Plan> plans() {
        List<Plan> plans = new ArrayList<>();
        List<Edge> openSources = new ArrayList<>();
        List<Edge> openOthers = new ArrayList<>();
        for (List<Edge> piece : pieces()) {
            List<Edge> reduced = reduced(closed(piece));
            if (reduced.size() == 1 && piece.size() <= MOST_PARTS && isOpen(reduced.get(0))) {
                (reduced.get(0).isSource() ? openSources : openOthers).add(reduced.get(0));
            } else if (Plan.isFor(reduced)) {
                plans.add(Plan.of(reduced));
            } else {
                plans.addAll(byLoops(piece));
            }
        }
        plans.addAll(ofOpenOnes(openSources, openOthers));
        return plans;
    }

    /** A board's output is no loose source: it belongs where its input lies. */
    private static boolean isOpen(Edge edge) {
        return edge.branch().strands().noneMatch(s -> s.part().kind() == PartKind.BOARD);
    }

    /** Pieces that nothing joins yet, laid out as the loop that they may become. */
    private static List<Plan> ofOpenOnes(List<Edge> sources, List<Edge> others) {
        if (sources.isEmpty() || others.isEmpty() || others.size() > 4) {
            List<Plan> plans = new ArrayList<>();
            sources.forEach(edge -> plans.add(Plan.of(List.of(edge))));
            others.forEach(edge -> plans.add(Plan.of(List.of(edge))));
            return plans;
        }
        Branch pack = sources.size() == 1
                ? Plan.of(sources).pack().orElseThrow()
                : new Branch.Parallel(sources.stream()
                        .map(edge -> Plan.of(List.of(edge)).pack().orElseThrow())
                        .toList());
        Branch load = new Branch.Series(others.stream().map(Edge::branch).toList());
        return List.of(new Plan(Optional.of(pack), Optional.of(load), Optional.empty()));
    }

    private List<Plan> byLoops(List<Edge> piece) {
        List<Plan> plans = new ArrayList<>();
        for (List<Edge> loop : Loops.of(piece)) {
            List<Edge> reduced = reduced(loop);
            boolean ordered = loop.size() > 1 && Plan.isFor(reduced);
            plans.add(ordered ? Plan.of(reduced) : irreducible(loop, reduced));
        }
        return plans;
    }

    private Plan irreducible(List<Edge> loop, List<Edge> reduced) {
        boolean layered = drawing == Drawing.SCHEMATIC && loop.size() > 1 && loop.size() <= MOST_LAYERED;
        return layered ? Plan.layered(reduced) : Plan.unordered(loop);
    }

    private static List<Edge> reduced(List<Edge> piece) {
        return piece.size() > MOST_PARTS ? piece : Reduction.of(piece);
    }

    /** The piece with its two loose ends taken for one, if it has just two. */
    private static List<Edge> closed(List<Edge> piece) {
        Map<Integer, Integer> degrees = new LinkedHashMap<>();
        for (Edge edge : piece) {
            degrees.merge(edge.from(), 1, Integer::sum);
            degrees.merge(edge.to(), 1, Integer::sum);
        }
        List<Integer> loose = degrees.entrySet().stream()
                .filter(entry -> entry.getValue() == 1)
                .map(Map.Entry::getKey)
                .toList();
        if (piece.size() < 3 || loose.size() != 2) {
            return piece;
        }
        return piece.stream()
                .map(edge -> edge.merging(loose.get(0), loose.get(1)))
                .toList();
    }

    private List<List<Edge>> pieces() {
        List<Edge> waiting = new ArrayList<>(edges());
        List<List<Edge>> pieces = new ArrayList<>();
        while (!waiting.isEmpty()) {
            pieces.add(pieceOf(waiting));
        }
        return pieces;
    }

    /** Takes the first edge and all that hangs together with it. */
    private static List<Edge> pieceOf(List<Edge> waiting) {
        Map<Integer, List<Edge>> atJoint = new HashMap<>();
        for (Edge edge : waiting) {
            atJoint.computeIfAbsent(edge.from(), key -> new ArrayList<>()).add(edge);
            atJoint.computeIfAbsent(edge.to(), key -> new ArrayList<>()).add(edge);
        }
        Set<Integer> reached = new HashSet<>(Set.of(waiting.get(0).from()));
        List<Integer> open = new ArrayList<>(reached);
        while (!open.isEmpty()) {
            int joint = open.remove(open.size() - 1);
            for (Edge edge : atJoint.getOrDefault(joint, List.of())) {
                for (int end : new int[] {edge.from(), edge.to()}) {
                    if (reached.add(end)) {
                        open.add(end);
                    }
                }
            }
        }
        List<Edge> piece =
                waiting.stream().filter(e -> reached.contains(e.from())).toList();
        // By their ends: comparing whole branches takes a second with two thousand parts.
        waiting.removeIf(edge -> reached.contains(edge.from()));
        return piece;
    }

    private List<Edge> edges() {
        List<Edge> edges = new ArrayList<>();
        for (Part part : scenario.parts()) {
            if (drawing == Drawing.SCHEMATIC || !isVoltmeter(part)) {
                strands(part).forEach(strand -> edges.add(edge(strand)));
            }
        }
        return edges;
    }

    private static List<Strand> strands(Part part) {
        List<String> ends = part.kind().terminals();
        return switch (part.kind().role()) {
            case SOURCE -> List.of(new Strand(part, ends.get(1), ends.get(0), Strand.Role.SOURCE));
            case LOAD -> List.of(new Strand(part, ends.get(0), ends.get(1), Strand.Role.LOAD));
            case IN_LINE, METER -> List.of(new Strand(part, ends.get(0), ends.get(1), Strand.Role.PATH));
            case CONVERTER ->
                List.of(
                        new Strand(part, "in+", "in-", Strand.Role.LOAD),
                        new Strand(part, "out-", "out+", Strand.Role.SOURCE));
        };
    }

    private Edge edge(Strand strand) {
        return new Edge(
                joints.of(strand.part().terminal(strand.entry())),
                joints.of(strand.part().terminal(strand.exit())),
                new Branch.Leaf(strand));
    }
}
