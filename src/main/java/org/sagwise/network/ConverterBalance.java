package org.sagwise.network;

/**
 * The common state of several running converters: each in turn takes its output voltage and input
 * current against the others as they stand, from open circuit until nothing moves. On a shared pack
 * the currents only rise, toward the solution at the highest voltage.
 */
final class ConverterBalance {
    /** Relative movement that counts as standing still. */
    private static final double STILL = 1e-14;

    /** Most updates of one converter by another over all rounds. */
    private static final long WORK = 20_000_000;

    private static final int MOST_ROUNDS = 20_000;

    /** Rounds after which steps are halved, against swinging to and fro. */
    private static final int PATIENCE = 1_000;

    private final ConverterPorts ports;
    private final double[] emfV;
    private final double[] chosenV;
    private final double[] inputA;
    private final boolean[] still;
    private int failed = -1;

    ConverterBalance(ConverterPorts ports) {
        this.ports = ports;
        emfV = new double[ports.count()];
        chosenV = new double[ports.count()];
        inputA = new double[ports.count()];
        still = new boolean[ports.count()];
        for (int j = 0; j < emfV.length; j++) {
            emfV[j] = ports.converter(j).outMaxV();
        }
        run();
    }

    /** Whether a converter had come to rest when the search ended. */
    boolean still(int j) {
        return still[j];
    }

    /** The converter whose source could not deliver, or -1. */
    int failed() {
        return failed;
    }

    double emfV(int j) {
        return emfV[j];
    }

    /** The output voltage that was chosen, within the limits (V). */
    double chosenV(int j) {
        return chosenV[j];
    }

    double inputA(int j) {
        return inputA[j];
    }

    double outputA(int j) {
        return ports.outputA(j, emfV, inputA);
    }

    double outputV(int j) {
        return emfV[j] - Stance.BOARD_OHM * outputA(j);
    }

    /** Input voltage if this converter alone drew nothing (V). */
    double unloadedInputV(int j) {
        return inputV(j) + ports.sourceOhm(j) * inputA[j];
    }

    double inputV(int j) {
        return ports.inputV(j, emfV, inputA);
    }

    private void run() {
        long pairs = Math.max(1, (long) ports.count() * ports.count());
        long rounds = Math.max(10, Math.min(MOST_ROUNDS, WORK / pairs));
        boolean moving = true;
        for (long round = 0; round < rounds && moving && failed < 0; round++) {
            moving = false;
            for (int j = 0; j < ports.count() && failed < 0; j++) {
                move(j, round < PATIENCE ? 1 : 0.5);
                moving |= !still[j];
            }
        }
    }

    /** One turn of one converter. */
    private void move(int j, double step) {
        double newEmfV = chooseEmfV(j);
        double oldEmfV = emfV[j];
        emfV[j] += step * (newEmfV - oldEmfV);
        double newInputA = chooseInputA(j);
        if (Double.isNaN(newInputA)) {
            failed = j;
            return;
        }
        still[j] = near(oldEmfV, newEmfV) && near(inputA[j], newInputA);
        inputA[j] += step * (newInputA - inputA[j]);
    }

    private double chooseEmfV(int j) {
        double behind = ports.loadSiemens(j);
        double openA = outputA(j) - behind * emfV[j];
        double beyond = 1 / (1 - behind * Stance.BOARD_OHM);
        double volt = ConverterRule.outputV(ports.converter(j), openA * beyond, behind * beyond);
        chosenV[j] = volt;
        return volt + Stance.BOARD_OHM * (openA + behind * volt) * beyond;
    }

    private double chooseInputA(int j) {
        double watt = Math.max(0, outputA(j) * outputV(j)) / ports.converter(j).efficiency();
        return ConverterRule.inputA(watt, unloadedInputV(j), ports.sourceOhm(j));
    }

    private static boolean near(double old, double fresh) {
        return Math.abs(fresh - old) <= STILL * Math.abs(fresh);
    }
}
