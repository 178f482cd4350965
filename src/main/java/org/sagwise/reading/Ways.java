package org.sagwise.reading;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.sagwise.network.Element;
import org.sagwise.scenario.net.Groups;

/**
 * The ways that current takes through a solved circuit: its nodes with ideal joints merged, and
 * between them the elements with their currents.
 */
final class Ways {

    /** Currents below this are no way of the current: a voltmeter's, or rounding, A. */
    static final double LEAST_A = 1e-4;

    private final Groups merged;
    private final List<Way> all = new ArrayList<>();
    private final List<List<Way>> at = new ArrayList<>();

    /**
     * One element, directed as its current flows.
     *
     * @param element its index in the network
     * @param from node where the current enters
     * @param to node where the current leaves
     * @param currentA current, A, 0 or more
     * @param rising whether the direction is from the minus to the plus of a source
     */
    record Way(int element, int from, int to, double currentA, boolean rising) {

        boolean isFlowing() {
            return currentA >= LEAST_A;
        }

        /** The same element walked the other way; only for one without current. */
        Way turned() {
            return new Way(element, to, from, currentA, !rising);
        }

        /** The other end than {@code node}. */
        int across(int node) {
            return node == from ? to : from;
        }
    }

    private Ways(int nodeCount) {
        merged = new Groups(nodeCount);
        for (int i = 0; i < nodeCount; i++) {
            at.add(new ArrayList<>());
        }
    }

    static Ways of(Moment moment) {
        List<Element> elements = moment.circuit().network().elements();
        Ways ways = new Ways(moment.circuit().network().nodeCount());
        for (int i = 0; i < elements.size(); i++) {
            if (elements.get(i) instanceof Element.Resistance joint && isMerged(joint, i, moment)) {
                ways.merged.join(joint.a(), joint.b());
            }
        }
        for (int i = 0; i < elements.size(); i++) {
            ways.add(elements.get(i), i, moment);
        }
        return ways;
    }

    /**
     * Ideal links are merged away. Parts without resistance are kept, such as a perfect switch: it
     * is no step while closed, but a gap when open.
     */
    private static boolean isMerged(Element.Resistance joint, int index, Moment moment) {
        boolean isLink = moment.circuit().owners().get(index).link().isPresent();
        return joint.ohm() == 0 && (isLink || Double.isNaN(moment.point().currentA(index)));
    }

    private void add(Element element, int index, Moment moment) {
        double currentA = moment.point().currentA(index);
        if (element instanceof Element.Resistance resistance) {
            add(index, resistance.a(), resistance.b(), currentA, false);
        } else if (element instanceof Element.Source source) {
            add(index, source.minus(), source.plus(), currentA, true);
        } else if (element instanceof Element.LimitedSource charger) {
            add(index, charger.minus(), charger.plus(), currentA, true);
        } else if (element instanceof Element.Converter board) {
            add(index, board.inPlus(), board.outPlus(), currentA, false);
        } else if (element instanceof Element.OneWay guard) {
            add(index, guard.from(), guard.to(), currentA, false);
        }
    }

    private void add(int index, int from, int to, double currentA, boolean rising) {
        int a = merged(from);
        int b = merged(to);
        if (a == b) {
            return;
        }
        Way way = currentA < 0
                ? new Way(index, b, a, -currentA, !rising)
                : new Way(index, a, b, Double.isNaN(currentA) ? 0 : currentA, rising);
        all.add(way);
        at.get(a).add(way);
        at.get(b).add(way);
    }

    /** The node that stands for this one and all that are ideally joined to it. */
    int merged(int node) {
        return merged.of(node);
    }

    /**
     * The way that a search has found from one node to another, in walking order; a new list.
     *
     * @param arrivedBy the element by which the search first came to each node
     */
    static List<Way> between(int start, int end, Map<Integer, Way> arrivedBy) {
        List<Way> found = new ArrayList<>();
        for (int node = end; node != start; node = arrivedBy.get(node).from()) {
            found.add(arrivedBy.get(node));
        }
        Collections.reverse(found);
        return found;
    }

    List<Way> all() {
        return all;
    }

    /** Every element at a node. */
    List<Way> at(int node) {
        return at.get(node);
    }

    /** The element that brings most current to a node. */
    Optional<Way> mostInto(int node) {
        return at.get(node).stream()
                .filter(way -> way.to() == node && way.isFlowing())
                .max((a, b) -> Double.compare(a.currentA(), b.currentA()));
    }

    /** The element that takes most current from a node. */
    Optional<Way> mostOutOf(int node) {
        return at.get(node).stream()
                .filter(way -> way.from() == node && way.isFlowing())
                .max((a, b) -> Double.compare(a.currentA(), b.currentA()));
    }
}
