package org.sagwise.ui.sound;

/** What makes sounds be heard. */
public interface Speaker {

    /** Plays some samples once, over whatever else is heard. */
    void play(double[] samples);

    /** Lets the hum go to a loudness, 0 to 1. */
    void hum(double loudness);
}
