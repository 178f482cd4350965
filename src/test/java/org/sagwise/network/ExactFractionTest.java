package org.sagwise.network;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.fraction.BigFraction;
import org.apache.commons.math3.fraction.BigFractionField;
import org.apache.commons.math3.linear.Array2DRowFieldMatrix;
import org.apache.commons.math3.linear.ArrayFieldVector;
import org.apache.commons.math3.linear.FieldLUDecomposition;
import org.apache.commons.math3.linear.FieldMatrix;
import org.apache.commons.math3.linear.FieldVector;
import org.sagwise.network.Element.Resistance;
import org.sagwise.network.Element.Source;

/**
 * Small networks with resistances from 1e-7 Ω to 1e9 Ω against exact fractions: the node equations
 * in rational numbers, without any rounding.
 */
class ExactFractionTest {
    private static final double CLOSE = 1e-12;

    @Property(tries = 300)
    void solve_widestResistances_agreesWithExactFractions(
            @ForAll long seed, @ForAll @IntRange(min = 2, max = 7) int nodes) {
        Network network = grounded(new RandomNetworks(seed, 1e-7, 1e9).cellsAndResistances(nodes));
        OperatingPoint point = NetworkSolver.solve(network);
        BigFraction[] potential = potentials(network);
        double largestA = 0;
        double[] exactA = new double[network.elements().size()];
        for (int i = 0; i < exactA.length; i++) {
            exactA[i] = rounded(current(network.elements().get(i), potential));
            largestA = Math.max(largestA, Math.abs(exactA[i]));
        }
        for (int i = 0; i < exactA.length; i++) {
            assertEquals(exactA[i], point.currentA(i), CLOSE * largestA, "element " + i);
        }
        for (int node = 0; node < nodes; node++) {
            assertEquals(rounded(potential[node]), point.potentialV(node), 10 * CLOSE);
        }
    }

    private static Network grounded(Network network) {
        List<Element> elements = new ArrayList<>(network.elements());
        for (int node = 1; node < network.nodeCount(); node++) {
            elements.add(new Resistance(node, 0, 1e8));
        }
        elements.add(new Source(1, 0, 4.2, 0.03));
        return new Network(network.nodeCount(), elements, List.of(0));
    }

    private static BigFraction[] potentials(Network network) {
        int nodes = network.nodeCount();
        FieldMatrix<BigFraction> siemens = new Array2DRowFieldMatrix<>(BigFractionField.getInstance(), nodes, nodes);
        FieldVector<BigFraction> ampere = new ArrayFieldVector<>(BigFractionField.getInstance(), nodes);
        for (Element element : network.elements()) {
            stamp(element, siemens, ampere);
        }
        for (int column = 0; column < nodes; column++) {
            siemens.setEntry(0, column, column == 0 ? BigFraction.ONE : BigFraction.ZERO);
        }
        ampere.setEntry(0, BigFraction.ZERO);
        return new FieldLUDecomposition<>(siemens).getSolver().solve(ampere).toArray();
    }

    private static void stamp(Element element, FieldMatrix<BigFraction> siemens, FieldVector<BigFraction> ampere) {
        int plus = element.nodes().get(0);
        int minus = element.nodes().get(1);
        if (plus == minus) {
            return;
        }
        BigFraction g = ohm(element).reciprocal();
        siemens.addToEntry(plus, plus, g);
        siemens.addToEntry(minus, minus, g);
        siemens.addToEntry(plus, minus, g.negate());
        siemens.addToEntry(minus, plus, g.negate());
        BigFraction injected = emf(element).multiply(g);
        ampere.setEntry(plus, ampere.getEntry(plus).add(injected));
        ampere.setEntry(minus, ampere.getEntry(minus).subtract(injected));
    }

    private static BigFraction current(Element element, BigFraction[] potential) {
        BigFraction volt = potential[element.nodes().get(0)].subtract(
                potential[element.nodes().get(1)]);
        return element instanceof Resistance
                ? volt.divide(ohm(element))
                : emf(element).subtract(volt).divide(ohm(element));
    }

    /** {@link BigFraction#doubleValue} gives 0 once the denominator passes 1e308. */
    private static double rounded(BigFraction fraction) {
        return new BigDecimal(fraction.getNumerator())
                .divide(new BigDecimal(fraction.getDenominator()), MathContext.DECIMAL128)
                .doubleValue();
    }

    private static BigFraction ohm(Element element) {
        return new BigFraction(element instanceof Source s ? s.seriesOhm() : ((Resistance) element).ohm());
    }

    private static BigFraction emf(Element element) {
        return element instanceof Source s ? new BigFraction(s.emfV()) : BigFraction.ZERO;
    }
}
