package org.sagwise.reading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.sagwise.network.Element;
import org.sagwise.network.OperatingPoint;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Joint;

/** Builds the staircase of a moment along a way that may have been found at another moment. */
final class StairBuilder {

    private final Bench bench;
    private final Moment pathMoment;
    private final Moment heightMoment;
    private final States states;
    private final Map<Integer, Double> shownV = new HashMap<>();
    private double nodeV;

    /**
     * @param pathMoment moment at which the current shows the way: the button held, so that the
     *     stairs keep their shape when it is let go
     * @param heightMoment moment whose potentials are the heights
     */
    StairBuilder(Bench bench, Moment pathMoment, Moment heightMoment, States states) {
        this.bench = bench;
        this.pathMoment = pathMoment;
        this.heightMoment = heightMoment;
        this.states = states;
    }

    Staircase build() {
        StairTracer tracer = new StairTracer(bench, pathMoment);
        List<Ways.Way> loop = tracer.loop();
        if (loop.isEmpty() || Double.isNaN(heightAt(loop.get(0).from()))) {
            return Staircase.flat();
        }
        List<Staircase.Step> steps = new ArrayList<>();
        List<Integer> stepsBefore = new ArrayList<>();
        nodeV = heightAt(loop.get(0).from());
        settle(loop, loop.get(0).from());
        for (Ways.Way way : loop) {
            stepsBefore.add(steps.size());
            steps.addAll(steps(way, way.from()));
        }
        stepsBefore.add(steps.size());
        int end = loop.get(loop.size() - 1).to();
        if (end != loop.get(0).from()) {
            steps.add(missingJoint(nodeV, shownV.get(loop.get(0).from())));
        }
        List<Staircase.Lane> lanes = new ArrayList<>();
        for (StairTracer.Beside beside : tracer.beside(loop)) {
            lanes.add(new Staircase.Lane(
                    lane(beside), stepsBefore.get(beside.afterWay()), stepsBefore.get(beside.untilWay())));
        }
        return measured(steps, lanes);
    }

    private List<Staircase.Step> lane(StairTracer.Beside beside) {
        List<Staircase.Step> steps = new ArrayList<>();
        int node = beside.start();
        settle(beside.ways(), node);
        nodeV = shownV.get(node);
        for (Ways.Way way : beside.ways()) {
            steps.addAll(steps(way, node));
            node = way.across(node);
        }
        return steps;
    }

    /**
     * Settles at which height the stairs pass every node of a way. One that hangs in the air, as a
     * coil behind an open switch may, has no potential: the first gap on the way takes the whole
     * step down to where the potential is known again, and the rest is level.
     */
    private void settle(List<Ways.Way> along, int start) {
        int[] nodes = new int[along.size() + 1];
        nodes[0] = start;
        for (int i = 0; i < along.size(); i++) {
            nodes[i + 1] = along.get(i).across(nodes[i]);
        }
        for (int i = 0; i < nodes.length; i++) {
            int node = nodes[i];
            if (!shownV.containsKey(node)) {
                double hangingV = i > 0 && isGap(along.get(i - 1)) ? ahead(nodes, i) : Double.NaN;
                double levelV = i > 0 ? shownV.get(nodes[i - 1]) : Double.NaN;
                shownV.put(node, firstKnown(heightAt(node), hangingV, levelV));
            }
        }
    }

    private boolean isGap(Ways.Way way) {
        Circuit.Owner owner = pathMoment.circuit().owners().get(way.element());
        return !owner.part().isEmpty() && !letsThrough(owner.part());
    }

    private boolean letsThrough(String part) {
        OptionalInt element = heightMoment.circuit().element(part);
        return element.isPresent() && !heightMoment.point().blocks(element.getAsInt());
    }

    private double ahead(int[] nodes, int from) {
        for (int i = from; i < nodes.length; i++) {
            double heightV = shownV.getOrDefault(nodes[i], heightAt(nodes[i]));
            if (!Double.isNaN(heightV)) {
                return heightV;
            }
        }
        return Double.NaN;
    }

    private static double firstKnown(double... heightsV) {
        for (double heightV : heightsV) {
            if (!Double.isNaN(heightV)) {
                return heightV;
            }
        }
        return Double.NaN;
    }

    private double heightAt(int node) {
        return heightMoment.point().potentialV(node);
    }

    private static Staircase measured(List<Staircase.Step> steps, List<Staircase.Lane> lanes) {
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        List<Staircase.Step> all = new ArrayList<>(steps);
        lanes.forEach(lane -> all.addAll(lane.steps()));
        for (Staircase.Step step : all) {
            lowest = Math.min(lowest, Math.min(step.fromV(), step.toV()));
            highest = Math.max(highest, Math.max(step.fromV(), step.toV()));
        }
        return new Staircase(steps, lanes, lowest, highest);
    }

    /** The steps of one element, walked from this end. */
    private List<Staircase.Step> steps(Ways.Way way, int startNode) {
        double beforeV = nodeV;
        nodeV = shownV.get(way.across(startNode));
        Element element = pathMoment.circuit().network().elements().get(way.element());
        boolean forward = startNode == way.from();
        boolean climbing = way.rising() == forward;
        Circuit.Owner owner = pathMoment.circuit().owners().get(way.element());
        double currentA = currentAlong(owner, way, forward);
        if (element instanceof Element.Source source) {
            return sourceSteps(owner, source, beforeV, nodeV, climbing, currentA);
        }
        return List.of(step(kind(owner), owner, beforeV, nodeV, currentA));
    }

    /**
     * Up to the rest voltage, then down by the sag; backwards through a cell the other way round.
     */
    private List<Staircase.Step> sourceSteps(
            Circuit.Owner owner,
            Element.Source source,
            double beforeV,
            double afterV,
            boolean climbing,
            double currentA) {
        boolean isCell = bench.cells().containsKey(owner.part());
        double emfV = isCell ? states.cells().get(owner.part()).restV() : source.emfV();
        Staircase.Kind kind = isCell ? Staircase.Kind.CELL : Staircase.Kind.SUPPLY;
        if (climbing) {
            double topV = beforeV + emfV;
            return List.of(
                    step(kind, owner, beforeV, topV, currentA),
                    step(Staircase.Kind.SAG, owner, topV, afterV, currentA));
        }
        double topV = afterV + emfV;
        return List.of(
                step(Staircase.Kind.SAG, owner, beforeV, topV, currentA), step(kind, owner, topV, afterV, currentA));
    }

    /** Current of the height moment, counted in the direction in which the stairs are walked. */
    private double currentAlong(Circuit.Owner owner, Ways.Way way, boolean forward) {
        Circuit heights = heightMoment.circuit();
        OperatingPoint point = heightMoment.point();
        int element = owner.link().isPresent()
                ? heights.elementOfLink()[owner.link().getAsInt()]
                : heights.element(owner.part()).orElse(-1);
        if (element < 0) {
            return 0;
        }
        double pathA = pathMoment.point().currentA(way.element());
        double currentA = point.currentA(element);
        boolean counted = pathA >= 0 == forward;
        return counted ? currentA : -currentA;
    }

    private Staircase.Kind kind(Circuit.Owner owner) {
        if (owner.link().isPresent()) {
            Joint joint = bench.scenario().links().get(owner.link().getAsInt()).joint();
            return joint instanceof Joint.Jumper ? Staircase.Kind.WIRE : Staircase.Kind.CONTACT;
        }
        PartKind kind = bench.part(owner.part()).kind();
        return switch (kind) {
            case SWITCH -> letsThrough(owner.part()) ? Staircase.Kind.SWITCH : Staircase.Kind.GAP;
            case REVERSE_GUARD -> letsThrough(owner.part()) ? Staircase.Kind.GUARD : Staircase.Kind.GAP;
            case FUSE, PTC -> Staircase.Kind.FUSE;
            case METER -> Staircase.Kind.METER;
            case BOARD -> Staircase.Kind.BOARD;
            case CHARGER -> Staircase.Kind.CHARGER;
            case COIL -> Staircase.Kind.COIL;
            case RESISTOR -> Staircase.Kind.RESISTOR;
            case CELL -> Staircase.Kind.CELL;
            case SUPPLY -> Staircase.Kind.SUPPLY;
        };
    }

    private static Staircase.Step missingJoint(double fromV, double toV) {
        return new Staircase.Step(Staircase.Kind.GAP, "", OptionalInt.empty(), fromV, toV, 0);
    }

    private static Staircase.Step step(
            Staircase.Kind kind, Circuit.Owner owner, double fromV, double toV, double currentA) {
        return new Staircase.Step(
                kind, owner.part(), owner.part().isEmpty() ? owner.link() : OptionalInt.empty(), fromV, toV, currentA);
    }
}
