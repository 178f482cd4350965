package org.sagwise.network;

import java.util.List;

/**
 * What the rest of the network does at the ports of running converters, as a straight line in all
 * their output emfs and input currents. The line is exact, since everything between the converters
 * is linear; it is measured by solving once with nothing and once with each of them alone.
 */
final class ConverterPorts {
    private final List<Element.Converter> converters;
    private final List<Integer> elements;
    private final Stance stance;
    private final double[] openOutA;
    private final double[] openInV;

    /** Output current of each converter for 1 V of each emf, then for 1 A of each input. */
    private final double[][] outA;

    /** Input voltage of each converter for 1 V of each emf, then for 1 A of each input. */
    private final double[][] inV;

    ConverterPorts(Network network, Stance stance, LinearCircuit circuit, List<Integer> running) {
        this.stance = stance;
        this.elements = running;
        converters = running.stream()
                .map(e -> (Element.Converter) network.elements().get(e))
                .toList();
        int count = running.size();
        double[] drive = circuit.branches().drive.clone();
        for (int element : running) {
            drive[element] = 0;
            drive[outputBranch(element)] = 0;
        }
        openOutA = new double[count];
        openInV = new double[count];
        read(circuit.solve(drive), openOutA, openInV);
        outA = new double[2 * count][count];
        inV = new double[2 * count][count];
        for (int k = 0; k < count; k++) {
            double[] unit = new double[drive.length];
            unit[outputBranch(running.get(k))] = 1;
            read(circuit.solve(unit), outA[k], inV[k]);
            unit[outputBranch(running.get(k))] = 0;
            unit[running.get(k)] = 1;
            read(circuit.solve(unit), outA[count + k], inV[count + k]);
        }
    }

    private int outputBranch(int element) {
        return stance.converter(element).outputBranch();
    }

    private void read(Flow flow, double[] outputA, double[] inputV) {
        for (int j = 0; j < elements.size(); j++) {
            Element.Converter c = converters.get(j);
            outputA[j] = flow.currentA()[outputBranch(elements.get(j))];
            inputV[j] = flow.voltageV(c.inPlus(), c.inMinus());
        }
    }

    int count() {
        return elements.size();
    }

    int element(int j) {
        return elements.get(j);
    }

    Element.Converter converter(int j) {
        return converters.get(j);
    }

    /** Conductance of its load, seen from behind its output resistance (S). */
    double loadSiemens(int j) {
        return outA[j][j];
    }

    /** Conductance of its load while all outputs move together (S). */
    double commonSiemens(int j) {
        double sum = 0;
        for (int k = 0; k < count(); k++) {
            sum += outA[k][j];
        }
        return sum;
    }

    /** Resistance of what feeds its input (Ω). */
    double sourceOhm(int j) {
        return -inV[count() + j][j];
    }

    /** Output current of a converter (A) for these emfs (V) and input currents (A). */
    double outputA(int j, double[] emfV, double[] inputA) {
        return along(openOutA[j], outA, j, emfV, inputA);
    }

    /** Input voltage of a converter (V) for these emfs (V) and input currents (A). */
    double inputV(int j, double[] emfV, double[] inputA) {
        return along(openInV[j], inV, j, emfV, inputA);
    }

    private double along(double start, double[][] slope, int j, double[] emfV, double[] inputA) {
        double sum = start;
        for (int k = 0; k < count(); k++) {
            sum += slope[k][j] * emfV[k] + slope[count() + k][j] * inputA[k];
        }
        return sum;
    }
}
