package org.sagwise.network;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.sagwise.network.Element.CurrentSource;
import org.sagwise.network.Element.Resistance;
import org.sagwise.network.Element.Source;

/** Networks made from others, and comparison of their currents. */
final class Changes {
    private Changes() {}

    interface Change {
        Element apply(int index, Element element);
    }

    static Network mapped(Network network, Change change) {
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < network.elements().size(); i++) {
            elements.add(change.apply(i, network.elements().get(i)));
        }
        return new Network(network.nodeCount(), elements, network.referencePreference());
    }

    static Element scaled(Element element, double driveFactor, double ohmFactor) {
        if (element instanceof Resistance r) {
            return new Resistance(r.a(), r.b(), r.ohm() * ohmFactor);
        }
        if (element instanceof Source s) {
            return new Source(s.plus(), s.minus(), s.emfV() * driveFactor, s.seriesOhm() * ohmFactor);
        }
        CurrentSource s = (CurrentSource) element;
        return new CurrentSource(s.plus(), s.minus(), s.currentA() * driveFactor);
    }

    static Element renamed(Element element, List<Integer> name) {
        UnaryOperator<Integer> of = name::get;
        if (element instanceof Resistance r) {
            return new Resistance(of.apply(r.a()), of.apply(r.b()), r.ohm());
        }
        if (element instanceof Source s) {
            return new Source(of.apply(s.plus()), of.apply(s.minus()), s.emfV(), s.seriesOhm());
        }
        CurrentSource s = (CurrentSource) element;
        return new CurrentSource(of.apply(s.plus()), of.apply(s.minus()), s.currentA());
    }

    static List<Integer> shuffled(int count, long seed) {
        List<Integer> numbers = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            numbers.add(i);
        }
        Collections.shuffle(numbers, new Random(seed));
        return numbers;
    }

    static double[] currents(OperatingPoint point) {
        double[] currentA = new double[point.network().elements().size()];
        for (int i = 0; i < currentA.length; i++) {
            currentA[i] = point.currentA(i);
        }
        return currentA;
    }

    static void assertCurrents(double[] expectedA, OperatingPoint point, double relative) {
        double largestA = 0;
        for (double currentA : expectedA) {
            largestA = Math.max(largestA, Math.abs(currentA));
        }
        for (int i = 0; i < expectedA.length; i++) {
            assertEquals(expectedA[i], point.currentA(i), relative * largestA, "element " + i);
        }
    }
}
