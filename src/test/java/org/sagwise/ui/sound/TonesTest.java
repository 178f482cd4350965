package org.sagwise.ui.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class TonesTest {

    private static double loudest(double[] samples) {
        return Arrays.stream(samples).map(Math::abs).max().orElse(0);
    }

    @Test
    void click_itsEnd_isQuiet() {
        double[] click = Tones.click();

        assertTrue(loudest(click) > 0.1, "can be heard");
        assertTrue(loudest(Arrays.copyOfRange(click, click.length * 3 / 4, click.length)) < 0.01, "dies");
    }

    @Test
    void everything_atOnce_isNotClipped() {
        double[] all = new double[Tones.RATE];
        new Hum().addTo(all, 1);

        assertTrue(loudest(all) + Math.max(loudest(Tones.click()), loudest(Tones.warning())) <= 1);
    }

    @Test
    void warning_fromSampleToSample_hasNoCrack() {
        double[] warning = Tones.warning();
        double steepest = 0;
        for (int i = 1; i < warning.length; i++) {
            steepest = Math.max(steepest, Math.abs(warning[i] - warning[i - 1]));
        }

        // The steepest that a sine of 740 Hz is at its loudest.
        assertTrue(steepest <= 1.01 * loudest(warning) * 2 * Math.PI * 740 / Tones.RATE, "steepest " + steepest);
    }

    @Test
    void loudness_ofCurrents_growsAndStaysWithinBounds() {
        assertEquals(0, Tones.loudness(0));
        assertEquals(0, Tones.loudness(-3));
        assertEquals(0, Tones.loudness(Double.NaN));
        assertTrue(Tones.loudness(1) < Tones.loudness(10) && Tones.loudness(10) < Tones.loudness(100));
        assertEquals(1, Tones.loudness(1e9));
    }

    @Test
    void hum_ofOneSecond_hasItsPitch() {
        Hum hum = new Hum();
        hum.addTo(new double[Tones.RATE], 1);
        double[] second = new double[Tones.RATE];
        hum.addTo(second, 1);
        int rising = 0;
        for (int i = 1; i < second.length; i++) {
            rising += second[i - 1] < 0 && second[i] >= 0 ? 1 : 0;
        }

        assertEquals(110, rising, 1);
    }

    @Test
    void hum_letGo_fadesToNothing() {
        Hum hum = new Hum();
        hum.addTo(new double[Tones.RATE], 1);
        hum.addTo(new double[Tones.RATE], 0);

        assertTrue(hum.isOver());
    }

    @Test
    void loudspeaker_onAMachineWithout_isSilentAndHarmless() throws Exception {
        try (Loudspeaker speaker = new Loudspeaker()) {
            speaker.play(Tones.click());
            speaker.hum(1);
            speaker.hum(0);
        }
    }

    @Test
    void bytes_ofSamples_areLittleEndianAndBounded() {
        byte[] bytes = Loudspeaker.bytes(new double[] {0, 1, -2});

        assertEquals(0, bytes[0]);
        assertEquals((byte) 0xff, bytes[2]);
        assertEquals(0x7f, bytes[3]);
        assertEquals((byte) 0x80, bytes[5]);
    }
}
