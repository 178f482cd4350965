package org.sagwise.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.sagwise.network.Element.CurrentSource;
import org.sagwise.network.Element.Resistance;
import org.sagwise.network.Element.Source;

/**
 * The same networks by another road: the tableau of Hachtel, Brayton and Gustavson ("The sparse
 * tableau approach to network analysis and design", IEEE Trans. Circuit Theory 18 (1971) 101-113),
 * with all node potentials, branch voltages and branch currents as unknowns, solved by the dense LU
 * of EJML.
 */
class TableauTest {
    private static final double CLOSE = 1e-9;

    /** Where everything is joined to one node, nothing but rounding is left to compare with. */
    private static final double LEAST = 1e-3;

    @Property
    void solve_benchNetwork_agreesWithTableau(@ForAll long seed, @ForAll @IntRange(min = 2, max = 60) int nodes) {
        Network network = grounded(new RandomNetworks(seed, 1e-3, 1e3).everything(nodes));
        OperatingPoint point = NetworkSolver.solve(network);
        DMatrixRMaj solution = tableau(network);
        int branches = network.elements().size();
        double largestV = LEAST;
        double largestA = LEAST;
        for (int i = 0; i < nodes; i++) {
            largestV = Math.max(largestV, Math.abs(solution.get(i)));
        }
        for (int i = 0; i < branches; i++) {
            largestA = Math.max(largestA, Math.abs(solution.get(nodes + branches + i)));
        }
        for (int i = 0; i < nodes; i++) {
            assertEquals(solution.get(i), point.potentialV(i), CLOSE * largestV, "node " + i);
        }
        for (int i = 0; i < branches; i++) {
            double tableauA = solution.get(nodes + branches + i);
            assertEquals(tableauA, point.currentA(i), CLOSE * largestA, "element " + i);
        }
    }

    /** Ties every node to node 0 through 10 Ω and adds a cell, so that all potentials exist. */
    private static Network grounded(Network network) {
        List<Element> elements = new ArrayList<>(network.elements());
        for (int node = 1; node < network.nodeCount(); node++) {
            elements.add(new Resistance(node, 0, 10));
        }
        elements.add(new Source(1, 0, 4.2, 0.03));
        return new Network(network.nodeCount(), elements, List.of(0));
    }

    /**
     * Unknowns: potentials, then voltages, then currents of the elements, as the solver signs them.
     */
    private static DMatrixRMaj tableau(Network network) {
        int nodes = network.nodeCount();
        int branches = network.elements().size();
        DMatrixRMaj a = new DMatrixRMaj(nodes + 2 * branches, nodes + 2 * branches);
        DMatrixRMaj b = new DMatrixRMaj(nodes + 2 * branches, 1);
        a.set(0, 0, 1);
        for (int i = 0; i < branches; i++) {
            Element element = network.elements().get(i);
            int first = element.nodes().get(0);
            int second = element.nodes().get(1);
            int volt = nodes + i;
            int ampere = nodes + branches + i;
            int direction = element instanceof Resistance ? 1 : -1;
            addTo(a, first, ampere, direction);
            addTo(a, second, ampere, -direction);
            addTo(a, volt, first, -1);
            addTo(a, volt, second, 1);
            a.set(volt, volt, 1);
            writeLaw(element, a, b, volt, ampere);
        }
        DMatrixRMaj solution = new DMatrixRMaj(nodes + 2 * branches, 1);
        assertTrue(CommonOps_DDRM.solve(a, b, solution), "the tableau is singular");
        return solution;
    }

    /**
     * Kirchhoff's current law is written for every node but the reference, whose row says V = 0.
     */
    private static void addTo(DMatrixRMaj a, int row, int column, double value) {
        if (row != 0) {
            a.set(row, column, a.get(row, column) + value);
        }
    }

    private static void writeLaw(Element element, DMatrixRMaj a, DMatrixRMaj b, int volt, int ampere) {
        if (element instanceof Resistance r) {
            a.set(ampere, volt, 1);
            a.set(ampere, ampere, -r.ohm());
        } else if (element instanceof Source s) {
            a.set(ampere, volt, 1);
            a.set(ampere, ampere, s.seriesOhm());
            b.set(ampere, 0, s.emfV());
        } else if (element instanceof CurrentSource s) {
            a.set(ampere, ampere, 1);
            b.set(ampere, 0, s.currentA());
        }
    }
}
