package org.sagwise.network;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.network.Element.Converter;
import org.sagwise.network.Element.CurrentSource;
import org.sagwise.network.Element.LimitedSource;
import org.sagwise.network.Element.Resistance;
import org.sagwise.network.Element.Source;

/** Builds networks for tests; node 0 is the preferred reference. */
final class Circuits {
    private Circuits() {}

    static OperatingPoint solve(int nodes, Element... elements) {
        return NetworkSolver.solve(network(nodes, elements));
    }

    static Network network(int nodes, Element... elements) {
        List<Integer> reference = nodes == 0 ? List.of() : List.of(0);
        return new Network(nodes, List.of(elements), reference);
    }

    static Resistance ohms(int a, int b, double ohm) {
        return new Resistance(a, b, ohm);
    }

    static Resistance joint(int a, int b) {
        return new Resistance(a, b, 0);
    }

    static Source cell(int plus, int minus, double emfV, double seriesOhm) {
        return new Source(plus, minus, emfV, seriesOhm);
    }

    static Source ideal(int plus, int minus, double emfV) {
        return new Source(plus, minus, emfV, 0);
    }

    static CurrentSource amps(int plus, int minus, double currentA) {
        return new CurrentSource(plus, minus, currentA);
    }

    static LimitedSource charger(int plus, int minus, double maxA, double limitV) {
        return new LimitedSource(plus, minus, maxA, limitV);
    }

    /** A 40 W board: 92 % efficient, cut-off 3.2 V, 20 A at most, output 0.5 V to 10 V. */
    static Converter board(int inPlus, int inMinus, int outPlus, int outMinus) {
        return new Converter(inPlus, inMinus, outPlus, outMinus, 40, 0.92, 3.2, 20, 0.5, 10);
    }

    static Network reordered(Network network, List<Element> elements) {
        return new Network(network.nodeCount(), new ArrayList<>(elements), network.referencePreference());
    }
}
