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
 * with one step of refinement.
 *
 * <p>Not for use by several threads at once: it works in arrays of its own.
 */
public final class PreparedNetwork {

    /** A pivot below this part of its diagonal means a loop without resistance. */
    private static final double SINGULAR = 1e-13;

    private final int elements;
    private final Loop[] loops;
    private final int[] sharedRow;
    private final int[] sharedColumn;
    private final int[] sharedBranch;
    private final int[] sharedSign;
    private final double[][] factor;
    private final double[] excess;

    private PreparedNetwork(int elements, List<Loop> loops) {
        this.elements = elements;
        this.loops = loops.toArray(new Loop[0]);
        List<int[]> shares = shares(this.loops, elements);
        int count = shares.size();
        sharedRow = new int[count];
        sharedColumn = new int[count];
        sharedBranch = new int[count];
        sharedSign = new int[count];
        for (int k = 0; k < count; k++) {
            sharedRow[k] = shares.get(k)[0];
            sharedColumn[k] = shares.get(k)[1];
            sharedBranch[k] = shares.get(k)[2];
            sharedSign[k] = shares.get(k)[3];
        }
        factor = new double[this.loops.length][this.loops.length];
        excess = new double[this.loops.length];
    }

    /**
     * Prepares a network; empty if it holds anything but resistances and voltage sources, whose
     * answers take more than one linear system.
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
        return Optional.of(new PreparedNetwork(branches.count(), loops));
    }

    /** Every resistance that two loops share, or that one has, as {row, column, branch, sign}. */
    private static List<int[]> shares(Loop[] loops, int branches) {
        int[][] signOf = new int[loops.length][branches];
        for (int i = 0; i < loops.length; i++) {
            signOf[i][loops[i].chord] = 1;
            for (int k = 0; k < loops[i].path.length; k++) {
                signOf[i][loops[i].path[k]] = loops[i].sign[k];
            }
        }
        List<int[]> shares = new ArrayList<>();
        for (int i = 0; i < loops.length; i++) {
            for (int j = 0; j <= i; j++) {
                for (int b = 0; b < branches; b++) {
                    int sign = signOf[i][b] * signOf[j][b];
                    if (sign != 0) {
                        shares.add(new int[] {i, j, b, sign});
                    }
                }
            }
        }
        return shares;
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
        for (int b = 0; b < elements; b++) {
            currentA[b] = 0;
        }
        if (!factorise(ohm)) {
            return false;
        }
        balance(emfV, ohm, currentA);
        balance(emfV, ohm, currentA);
        return true;
    }

    private boolean factorise(double[] ohm) {
        for (double[] row : factor) {
            Arrays.fill(row, 0);
        }
        for (int k = 0; k < sharedRow.length; k++) {
            factor[sharedRow[k]][sharedColumn[k]] += sharedSign[k] * ohm[sharedBranch[k]];
        }
        for (int j = 0; j < factor.length; j++) {
            double[] row = factor[j];
            double pivot = row[j];
            double least = SINGULAR * pivot;
            for (int k = 0; k < j; k++) {
                pivot -= row[k] * row[k];
            }
            if (!(pivot > least)) {
                return false;
            }
            row[j] = Math.sqrt(pivot);
            eliminate(j);
        }
        return true;
    }

    private void eliminate(int j) {
        double[] pivotRow = factor[j];
        for (int i = j + 1; i < factor.length; i++) {
            double[] row = factor[i];
            double sum = row[j];
            for (int k = 0; k < j; k++) {
                sum -= row[k] * pivotRow[k];
            }
            row[j] = sum / pivotRow[j];
        }
    }

    /** Circulates what is still missing in each loop; a second call refines the first. */
    private void balance(double[] emfV, double[] ohm, double[] currentA) {
        int size = loops.length;
        for (int i = 0; i < size; i++) {
            double sum = excessV(loops[i], emfV, ohm, currentA);
            for (int k = 0; k < i; k++) {
                sum -= factor[i][k] * excess[k];
            }
            excess[i] = sum / factor[i][i];
        }
        for (int i = size - 1; i >= 0; i--) {
            double sum = excess[i];
            for (int k = i + 1; k < size; k++) {
                sum -= factor[k][i] * excess[k];
            }
            excess[i] = sum / factor[i][i];
        }
        for (int i = 0; i < size; i++) {
            loops[i].circulate(excess[i], currentA);
        }
    }

    private static double excessV(Loop loop, double[] emfV, double[] ohm, double[] currentA) {
        double sum = emfV[loop.chord] - ohm[loop.chord] * currentA[loop.chord];
        for (int k = 0; k < loop.path.length; k++) {
            int b = loop.path[k];
            sum += loop.sign[k] * (emfV[b] - ohm[b] * currentA[b]);
        }
        return sum;
    }
}
