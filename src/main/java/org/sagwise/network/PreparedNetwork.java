package org.sagwise.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A network of resistances and sources whose wiring stays while its volts and ohms change: the
 * loops are found once, and each solution costs one small factorisation. For simulations that solve
 * the same bench thousands of times; {@link NetworkSolver} answers single questions and explains
 * what stands in the way of an answer.
 *
 * <p>The loops are chosen for the values it was prepared with (see the package description). They
 * stay valid for any others; accuracy is then that of an ordinary linear system in {@code double},
 * with one step of refinement. What a loop still lacks is summed in doubled precision: equal emfs
 * that face each other across a millionth of an ohm cancel to 1e-16 of their volts, and even that
 * would be some nanoamperes.
 *
 * <p>Not for use by several threads at once: it works in arrays of its own.
 */
public final class PreparedNetwork {

    /**
     * More loops than this are quicker solved anew by way of the nodes: the work here grows with
     * the cube of the loops.
     */
    static final int MOST_LOOPS = 400;

    private final int elements;
    private final Loop[] loops;
    private final BranchUse use;
    private final LoopFactors factors;
    private final double[] excess;

    private PreparedNetwork(int elements, List<Loop> loops, BranchUse use) {
        this.elements = elements;
        this.loops = loops.toArray(new Loop[0]);
        this.use = use;
        factors = new LoopFactors(this.loops.length);
        excess = new double[this.loops.length];
    }

    /**
     * Prepares a network; empty if it holds anything but resistances and voltage sources, whose
     * answers take more than one linear system, or if it has too many loops for this to pay.
     *
     * @param network its wiring, with ohms of the size that will be asked for; a resistance of 0 Ω
     *     must stay one
     */
    public static Optional<PreparedNetwork> of(Network network) {
        for (Element element : network.elements()) {
            if (!(element instanceof Element.Resistance || element instanceof Element.Source)) {
                return Optional.empty();
            }
        }
        Branches branches = Branches.of(network, Stance.initial(network));
        SpanningForest forest = new SpanningForest(branches, network.referencePreference());
        List<Loop> loops = new ArrayList<>();
        for (int b = 0; b < branches.count(); b++) {
            if (!forest.inForest[b] && branches.kind[b] != Branches.Kind.JOINT) {
                loops.add(Loop.closedBy(b, branches, forest));
            }
        }
        if (loops.size() > MOST_LOOPS) {
            return Optional.empty();
        }
        return Optional.of(new PreparedNetwork(branches.count(), loops, new BranchUse(loops, resisting(branches))));
    }

    /** 1 for every branch that may have a resistance, 0 for ideal joints. */
    private static double[] resisting(Branches branches) {
        double[] resisting = new double[branches.count()];
        for (int b = 0; b < resisting.length; b++) {
            resisting[b] = branches.kind[b] == Branches.Kind.JOINT ? 0 : 1;
        }
        return resisting;
    }

    /**
     * Currents for these values, counted as in {@link OperatingPoint#currentA}; those of ideal
     * joints in loops of ideal joints are left at 0.
     *
     * @param emfV volts of each source by its index, V; 0 for a resistance
     * @param ohm ohms of each element, 0 or more
     * @param currentA takes the currents, A
     * @return whether there is one answer; false if some loop has no resistance at all, and the
     *     currents are then of no use
     */
    public boolean solve(double[] emfV, double[] ohm, double[] currentA) {
        Arrays.fill(currentA, 0, elements, 0);
        if (!factorise(ohm)) {
            return false;
        }
        balance(emfV, ohm, currentA);
        balance(emfV, ohm, currentA);
        return true;
    }

    /** Additions and multiplications that one solution takes, roughly. */
    public double effort() {
        double size = loops.length;
        return size * size * size / 3 + 30.0 * elements;
    }

    private boolean factorise(double[] ohm) {
        for (int i = 0; i < loops.length; i++) {
            Arrays.fill(factors.rows[i], 0);
            factors.rows[i][i] = ohm[loops[i].chord];
        }
        use.addShared(ohm, factors.rows);
        return factors.factorise();
    }

    /** Circulates what is still missing in each loop; a second call refines the first. */
    private void balance(double[] emfV, double[] ohm, double[] currentA) {
        for (int i = 0; i < loops.length; i++) {
            excess[i] = loops[i].excessV(emfV, ohm, currentA);
        }
        factors.solve(excess);
        for (int i = 0; i < loops.length; i++) {
            loops[i].circulate(excess[i], currentA);
        }
    }
}
