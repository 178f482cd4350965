package org.sagwise.ui.sound;

/** A low hum that goes on for as long as current flows, and swells and fades instead of jumping. */
final class Hum {

    /** Low, and with the octave above it, so that small loudspeakers have something to play. */
    private static final double HZ = 110;

    /** Its share of the loudest there is: it must not tire anybody. */
    private static final double SHARE = 0.3;

    /** Time in which it takes on another loudness, s. */
    private static final double SWELLS_S = 0.08;

    private double phase;
    private double loudness;

    /** Whether nothing of it can be heard any more. */
    boolean isOver() {
        return loudness == 0;
    }

    /**
     * Adds what comes next.
     *
     * @param samples to which it is added
     * @param wanted loudness it goes to, 0 to 1
     */
    void addTo(double[] samples, double wanted) {
        double most = 1 / (SWELLS_S * Tones.RATE);
        for (int i = 0; i < samples.length; i++) {
            loudness += Math.max(-most, Math.min(most, wanted - loudness));
            phase = (phase + HZ / Tones.RATE) % 1;
            double angle = 2 * Math.PI * phase;
            samples[i] += SHARE * Tones.LOUDEST * loudness * (0.7 * Math.sin(angle) + 0.3 * Math.sin(2 * angle));
        }
    }
}
