package org.sagwise.ui.sound;

import java.util.Random;

/**
 * The sounds themselves, made from sines and noise: one channel of samples from −1 to 1. How loud and
 * how high is our choice.
 */
final class Tones {

    /** Samples a second. */
    static final int RATE = 22_050;

    /** Most of what a sample may be, so that a click over the hum is not clipped. */
    static final double LOUDEST = 0.6;

    private static final double CLICK_S = 0.03;
    private static final double CLICK_FADES_S = 0.004;
    private static final double CLICK_HZ = 2_100;
    private static final double WARNING_S = 0.5;
    private static final double FIRST_HZ = 740;
    private static final double SECOND_HZ = 587;
    private static final double EDGE_S = 0.02;

    private Tones() {}

    /** A contact that opens or closes: a short knock that rings and dies. */
    static double[] click() {
        Random noise = new Random(1);
        double[] samples = new double[(int) (CLICK_S * RATE)];
        for (int i = 0; i < samples.length; i++) {
            double timeS = (double) i / RATE;
            double ringing = 0.6 * Math.sin(2 * Math.PI * CLICK_HZ * timeS) + 0.4 * (2 * noise.nextDouble() - 1);
            samples[i] = LOUDEST * ringing * Math.exp(-timeS / CLICK_FADES_S) * edge(i, samples.length);
        }
        return samples;
    }

    /** Two tones, the second lower: something is wrong. Not shrill, and over at once. */
    static double[] warning() {
        double[] samples = new double[(int) (WARNING_S * RATE)];
        int half = samples.length / 2;
        for (int i = 0; i < samples.length; i++) {
            boolean first = i < half;
            double timeS = (double) (first ? i : i - half) / RATE;
            double tone = Math.sin(2 * Math.PI * (first ? FIRST_HZ : SECOND_HZ) * timeS);
            samples[i] = 0.6 * LOUDEST * tone * (first ? edge(i, half) : edge(i - half, samples.length - half));
        }
        return samples;
    }

    /** Rises and falls within a few milliseconds, since a sudden edge is heard as a crack. */
    private static double edge(int sample, int length) {
        double near = Math.min(sample, length - 1 - sample) / (EDGE_S * RATE);
        return length < 4 * EDGE_S * RATE ? Math.min(1, 8 * near) : Math.min(1, near);
    }

    /**
     * How loud a current hums, from 0 to 1: by its logarithm, as the marks on the bench are fast.
     *
     * @param currentA A; anything but a positive number is silent
     */
    static double loudness(double currentA) {
        return currentA > 0 && Double.isFinite(currentA) ? Math.min(1, Math.log10(1 + currentA) / 2.5) : 0;
    }
}
